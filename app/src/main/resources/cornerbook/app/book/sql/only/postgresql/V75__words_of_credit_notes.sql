-- What was written beside the reason of a credit note. It stands on no paper, and is erased when its customer is; the note itself
-- bears a reason of the list. Notes made before had a reason in words of their own: of those alone the words may become a dash.
create table credit_words (
    bill_number integer primary key references bill (number),
    words text not null
);

create function refuse_change_of_bill_but_words() returns trigger language plpgsql as $$
begin
    if tg_op = 'UPDATE' and old.credits is not null and new.reason = '–'
        and to_jsonb(new) - 'reason' = to_jsonb(old) - 'reason' then
        return new;
    end if;
    raise exception 'a bill is never changed or deleted, a credit note gives it back';
end;
$$;

drop trigger bill_stays on bill;

create trigger bill_stays before update or delete on bill
for each row execute function refuse_change_of_bill_but_words();
