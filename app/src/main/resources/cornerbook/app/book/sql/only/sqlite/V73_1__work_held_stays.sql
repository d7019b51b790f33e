-- SQLite's own words for: what was said of work that was not agreed is never changed or deleted.

create trigger estimate_line_work_is_never_updated before update on estimate_line_work
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_line_work_is_never_deleted before delete on estimate_line_work
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger work_answer_is_never_deleted before delete on work_answer
begin
    select raise(abort, 'what was said of work is never changed or deleted');
end;

create trigger work_answer_is_never_updated before update of id, visit_id, place_in_list, work, kind, line_key, person, made_at on work_answer
begin
    select raise(abort, 'what was said of work is never changed or deleted');
end;

-- The reason, in words of a person's own, may be erased, and nothing else be put there.
create trigger work_answer_is_only_erased before update of reason on work_answer
when new.reason <> '–'
begin
    select raise(abort, 'what was said of work is never changed or deleted');
end;
