-- SQLite's own words for: what was said of a person's skills is never changed or deleted.

create trigger person_skill_is_never_updated before update on person_skill
begin
    select raise(abort, 'what was said of a skill is never changed; say it anew');
end;

create trigger person_skill_is_never_deleted before delete on person_skill
begin
    select raise(abort, 'what was said of a skill is never deleted');
end;
