-- What was written beside the reason of a credit note. It stands on no paper, and is erased when its customer is; the note itself
-- bears a reason of the list. Notes made before had a reason in words of their own: of those alone the words may become a dash.
create table credit_words (
    bill_number integer primary key references bill (number),
    words text not null
);

drop trigger bill_is_never_updated;

create trigger bill_is_never_updated before update on bill
when not (old.credits is not null and new.reason = '–'
    and new.number = old.number and new.id = old.id and new.credits is old.credits and new.visit_id = old.visit_id
    and new.language = old.language and new.day = old.day and new.place = old.place and new.currency = old.currency
    and new.person = old.person and new.made_at = old.made_at)
begin
    select raise(abort, 'a bill is never changed or deleted, a credit note gives it back');
end;
