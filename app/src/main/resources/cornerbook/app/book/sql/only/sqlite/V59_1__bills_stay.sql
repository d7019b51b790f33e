-- SQLite's own words for: a bill is never changed or deleted, a credit note gives it back.

create trigger bill_is_never_updated before update on bill
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_is_never_deleted before delete on bill
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_line_is_never_updated before update on bill_line
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_line_is_never_deleted before delete on bill_line
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_tax_is_never_updated before update on bill_tax
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_tax_is_never_deleted before delete on bill_tax
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_payment_is_never_updated before update on bill_payment
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;

create trigger bill_payment_is_never_deleted before delete on bill_payment
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;
