-- SQLite's own words for: a price is never changed or deleted, another one begins.

create trigger price_is_never_updated before update on price
begin
    select raise(abort, 'a price is never changed or deleted, another one begins');
end;

create trigger price_is_never_deleted before delete on price
begin
    select raise(abort, 'a price is never changed or deleted, another one begins');
end;

create trigger tax_place_is_never_updated before update on tax_place
begin
    select raise(abort, 'a price is never changed or deleted, another one begins');
end;

create trigger tax_place_is_never_deleted before delete on tax_place
begin
    select raise(abort, 'a price is never changed or deleted, another one begins');
end;

create trigger shop_tax_is_never_updated before update on shop_tax
begin
    select raise(abort, 'a price is never changed or deleted, another one begins');
end;

create trigger shop_tax_is_never_deleted before delete on shop_tax
begin
    select raise(abort, 'a price is never changed or deleted, another one begins');
end;
