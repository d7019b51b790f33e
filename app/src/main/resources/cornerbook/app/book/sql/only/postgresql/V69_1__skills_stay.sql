-- PostgreSQL's own words for: what was said of a person's skills is never changed or deleted.

create function refuse_change_of_skill() returns trigger language plpgsql as $$
begin
    raise exception 'what was said of a skill is never changed or deleted; say it anew';
end;
$$;

create trigger person_skill_stays before update or delete on person_skill
for each row execute function refuse_change_of_skill();

create trigger person_skills_are_never_emptied before truncate on person_skill
for each statement execute function refuse_change_of_skill();
