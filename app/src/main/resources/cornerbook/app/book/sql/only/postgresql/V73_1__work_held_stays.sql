-- PostgreSQL's own words for: what was said of work that was not agreed is never changed or deleted.

create trigger estimate_line_work_stays before update or delete on estimate_line_work
for each row execute function refuse_change_of_estimate();

create trigger estimate_line_work_is_never_emptied before truncate on estimate_line_work
for each statement execute function refuse_change_of_estimate();

create function refuse_change_of_work_answer() returns trigger language plpgsql as $$
begin
    raise exception 'what was said of work is never changed or deleted';
end;
$$;

create trigger work_answer_stays before delete on work_answer
for each row execute function refuse_change_of_work_answer();

create trigger work_answer_is_never_emptied before truncate on work_answer
for each statement execute function refuse_change_of_work_answer();

-- The reason, in words of a person's own, may be erased, and nothing else be changed.
create trigger work_answer_is_only_erased before update on work_answer
for each row when (
    new.reason <> '–'
    or (new.id, new.visit_id, new.place_in_list, new.work, new.kind, new.line_key, new.person, new.made_at)
        is distinct from (old.id, old.visit_id, old.place_in_list, old.work, old.kind, old.line_key, old.person, old.made_at))
execute function refuse_change_of_work_answer();
