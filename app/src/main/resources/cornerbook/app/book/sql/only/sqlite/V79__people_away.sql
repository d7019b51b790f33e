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

create trigger person_away_is_never_updated before update on person_away
begin
    select raise(abort, 'a row of person_away is never changed; what came later is another row');
end;

create trigger person_away_is_never_deleted before delete on person_away
begin
    select raise(abort, 'a row of person_away is never deleted; what came later is another row');
end;

create trigger person_back_is_never_updated before update on person_back
begin
    select raise(abort, 'a row of person_back is never changed; what came later is another row');
end;

create trigger person_back_is_never_deleted before delete on person_back
begin
    select raise(abort, 'a row of person_back is never deleted; what came later is another row');
end;
