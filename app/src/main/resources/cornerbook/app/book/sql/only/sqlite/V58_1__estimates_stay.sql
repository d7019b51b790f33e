-- SQLite's own words for: an estimate and what was agreed are never changed or deleted.

create trigger estimate_is_never_updated before update on estimate
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_is_never_deleted before delete on estimate
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_line_is_never_updated before update on estimate_line
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_line_is_never_deleted before delete on estimate_line
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_tax_is_never_updated before update on estimate_tax
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_tax_is_never_deleted before delete on estimate_tax
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_link_is_never_updated before update on estimate_link
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger estimate_link_is_never_deleted before delete on estimate_link
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger agreement_answer_is_never_updated before update on agreement_answer
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger agreement_answer_is_never_deleted before delete on agreement_answer
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger agreement_is_never_deleted before delete on agreement
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

create trigger agreement_is_never_updated before update of id, estimate_id, place_in_list, way, language, words, hash, person, made_at on agreement
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;

-- The person may be erased, and nothing else be put there.
create trigger agreement_is_only_erased before update of name, contact, signature on agreement
when new.name <> '–' or new.contact not in ('', '–') or new.signature is not null
begin
    select raise(abort, 'an estimate and what was agreed are never changed or deleted');
end;
