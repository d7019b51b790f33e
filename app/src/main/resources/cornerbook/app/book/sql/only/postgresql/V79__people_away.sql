-- Days on which somebody who works here is not there, both counted, and that it was taken back. Why is not kept.
create table person_away (
    id text primary key,
    person text not null references person (name),
    first_day text not null,
    last_day text not null,
    said_by text,
    made_at text not null,
    check (first_day <= last_day)
);

create table person_back (
    id text primary key,
    away_id text not null references person_away (id),
    said_by text,
    made_at text not null
);
create unique index person_back_by_away on person_back (away_id);

create function refuse_change_of_absence() returns trigger language plpgsql as $$
begin
    raise exception 'a row of who is away is never changed or deleted; what came later is another row';
end;
$$;

create trigger person_away_stays before update or delete on person_away
for each row execute function refuse_change_of_absence();

create trigger person_away_is_never_emptied before truncate on person_away
for each statement execute function refuse_change_of_absence();

create trigger person_back_stays before update or delete on person_back
for each row execute function refuse_change_of_absence();

create trigger person_back_is_never_emptied before truncate on person_back
for each statement execute function refuse_change_of_absence();
