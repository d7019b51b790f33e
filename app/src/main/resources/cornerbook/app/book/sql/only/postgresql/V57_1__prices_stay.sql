-- PostgreSQL's own words for: a price is never changed or deleted, another one begins.

create function refuse_change_of_price() returns trigger language plpgsql as $$
begin
    raise exception 'a price is never changed or deleted, another one begins';
end;
$$;

create trigger price_stays before update or delete on price
for each row execute function refuse_change_of_price();

create trigger price_is_never_emptied before truncate on price
for each statement execute function refuse_change_of_price();

create trigger tax_place_stays before update or delete on tax_place
for each row execute function refuse_change_of_price();

create trigger tax_place_is_never_emptied before truncate on tax_place
for each statement execute function refuse_change_of_price();

create trigger shop_tax_stays before update or delete on shop_tax
for each row execute function refuse_change_of_price();

create trigger shop_tax_is_never_emptied before truncate on shop_tax
for each statement execute function refuse_change_of_price();
