-- What people have learned that some of the work needs: a row for each time that it was said, the last one stands.
create table person_skill (
    id text primary key,
    person text not null references person (name),
    skill text not null check (skill in ('HIGH_VOLTAGE', 'BRAKES')),
    place_in_list integer not null,
    has integer not null check (has in (0, 1)),
    -- Who said so; null where nobody was named.
    said_by text,
    made_at text not null
);
create unique index person_skill_by_place on person_skill (person, skill, place_in_list);
