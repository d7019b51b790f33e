-- A customer is asked for a day, by an address that the customer opens without pairing; the book keeps only a digest of its secret.
create table day_asking (
    id text primary key,
    vehicle_id text not null references vehicle (id),
    secret_hash text not null unique,
    work text not null,
    minutes integer not null check (minutes between 1 and 1440),
    -- The last day that may be picked.
    until text not null,
    language text not null,
    -- Who asked; null where nobody was named.
    person text,
    made_at text not null
);
create index day_asking_by_vehicle on day_asking (vehicle_id);

-- What the customer would like: a row for each answer, the last one stands.
create table day_wish (
    id text primary key,
    asking_id text not null references day_asking (id),
    place_in_list integer not null,
    -- Null where the customer would rather be called.
    day text,
    starts text,
    made_at text not null,
    check ((day is null) = (starts is null))
);
create unique index day_wish_by_place on day_wish (asking_id, place_in_list);

-- What became of it; a wish without a row waits.
create table day_wish_answer (
    wish_id text primary key references day_wish (id),
    answer text not null check (answer in ('BOOKED', 'SET_ASIDE')),
    person text,
    made_at text not null
);
