-- PostgreSQL's own words for: an estimate and what was agreed are never changed or deleted.

create function refuse_change_of_estimate() returns trigger language plpgsql as $$
begin
    raise exception 'an estimate and what was agreed are never changed or deleted';
end;
$$;

create trigger estimate_stays before update or delete on estimate
for each row execute function refuse_change_of_estimate();

create trigger estimate_is_never_emptied before truncate on estimate
for each statement execute function refuse_change_of_estimate();

create trigger estimate_line_stays before update or delete on estimate_line
for each row execute function refuse_change_of_estimate();

create trigger estimate_line_is_never_emptied before truncate on estimate_line
for each statement execute function refuse_change_of_estimate();

create trigger estimate_tax_stays before update or delete on estimate_tax
for each row execute function refuse_change_of_estimate();

create trigger estimate_tax_is_never_emptied before truncate on estimate_tax
for each statement execute function refuse_change_of_estimate();

create trigger estimate_link_stays before update or delete on estimate_link
for each row execute function refuse_change_of_estimate();

create trigger estimate_link_is_never_emptied before truncate on estimate_link
for each statement execute function refuse_change_of_estimate();

create trigger agreement_answer_stays before update or delete on agreement_answer
for each row execute function refuse_change_of_estimate();

create trigger agreement_answer_is_never_emptied before truncate on agreement_answer
for each statement execute function refuse_change_of_estimate();

create trigger agreement_stays before delete on agreement
for each row execute function refuse_change_of_estimate();

create trigger agreement_is_never_emptied before truncate on agreement
for each statement execute function refuse_change_of_estimate();

-- The person may be erased, and nothing else be changed.
create trigger agreement_is_only_erased before update on agreement
for each row when (
    new.name <> '–' or new.contact not in ('', '–') or new.signature is not null
    or (new.id, new.estimate_id, new.place_in_list, new.way, new.language, new.words, new.hash, new.person, new.made_at)
        is distinct from (old.id, old.estimate_id, old.place_in_list, old.way, old.language, old.words, old.hash, old.person, old.made_at))
execute function refuse_change_of_estimate();
