-- PostgreSQL's own words for: a bill is never changed or deleted, a credit note gives it back.

create function refuse_change_of_bill() returns trigger language plpgsql as $$
begin
    raise exception 'a bill is never changed or deleted, a credit note gives it back';
end;
$$;

create trigger bill_stays before update or delete on bill
for each row execute function refuse_change_of_bill();

create trigger bill_is_never_emptied before truncate on bill
for each statement execute function refuse_change_of_bill();

create trigger bill_line_stays before update or delete on bill_line
for each row execute function refuse_change_of_bill();

create trigger bill_line_is_never_emptied before truncate on bill_line
for each statement execute function refuse_change_of_bill();

create trigger bill_tax_stays before update or delete on bill_tax
for each row execute function refuse_change_of_bill();

create trigger bill_tax_is_never_emptied before truncate on bill_tax
for each statement execute function refuse_change_of_bill();

create trigger bill_payment_stays before update or delete on bill_payment
for each row execute function refuse_change_of_bill();

create trigger bill_payment_is_never_emptied before truncate on bill_payment
for each statement execute function refuse_change_of_bill();
