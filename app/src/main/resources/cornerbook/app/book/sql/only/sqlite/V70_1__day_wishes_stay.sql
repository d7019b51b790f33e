-- SQLite's own words for: what a customer was asked and would like, and what became of it, is never changed or deleted.

create trigger day_asking_is_never_updated before update on day_asking
begin
    select raise(abort, 'a question for a day is never changed');
end;

create trigger day_asking_is_never_deleted before delete on day_asking
begin
    select raise(abort, 'a question for a day is never deleted');
end;

create trigger day_wish_is_never_updated before update on day_wish
begin
    select raise(abort, 'a wish for a day is never changed');
end;

create trigger day_wish_is_never_deleted before delete on day_wish
begin
    select raise(abort, 'a wish for a day is never deleted');
end;

create trigger day_wish_answer_is_never_updated before update on day_wish_answer
begin
    select raise(abort, 'the answer to a wish for a day is never changed');
end;

create trigger day_wish_answer_is_never_deleted before delete on day_wish_answer
begin
    select raise(abort, 'the answer to a wish for a day is never deleted');
end;
