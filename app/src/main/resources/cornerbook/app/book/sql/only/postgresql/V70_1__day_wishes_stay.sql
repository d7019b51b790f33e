-- PostgreSQL's own words for: what a customer was asked and would like, and what became of it, is never changed or deleted.

create function refuse_change_of_wish() returns trigger language plpgsql as $$
begin
    raise exception 'what a customer was asked and would like is never changed or deleted';
end;
$$;

create trigger day_asking_stays before update or delete on day_asking
for each row execute function refuse_change_of_wish();

create trigger day_asking_is_never_emptied before truncate on day_asking
for each statement execute function refuse_change_of_wish();

create trigger day_wish_stays before update or delete on day_wish
for each row execute function refuse_change_of_wish();

create trigger day_wish_is_never_emptied before truncate on day_wish
for each statement execute function refuse_change_of_wish();

create trigger day_wish_answer_stays before update or delete on day_wish_answer
for each row execute function refuse_change_of_wish();

create trigger day_wish_answer_is_never_emptied before truncate on day_wish_answer
for each statement execute function refuse_change_of_wish();
