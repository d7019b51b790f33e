-- What tablets in the bay enter. All of it is append-only, with ids that are born at the tablet.

-- A reading taken where another stood that the tablet did not know of: both are kept until a person answers.
create table rival_reading (
    id text primary key,
    visit_id text not null references visit (id),
    standing_id text not null references reading (id),
    measure text not null,
    corner text check (corner in ('LF', 'RF', 'LR', 'RR')),
    wheel_tag text references wheel (tag),
    spot text check (spot in ('INNER', 'CENTRE', 'OUTER')),
    amount double precision not null,
    as_written text not null,
    person text not null,
    made_at text not null
);
create index rival_reading_by_visit on rival_reading (visit_id);

-- Taken: it became a correction. Kept: the other stands. Agreed: both say the same.
create table rival_answer (
    rival_id text primary key references rival_reading (id),
    answer text not null check (answer in ('TAKEN', 'KEPT', 'AGREED')),
    person text not null,
    made_at text not null
);

-- A step of the work that was ticked, or whose tick was taken back.
create table work_tick (
    id text primary key,
    visit_id text not null references visit (id),
    tick text not null,
    done integer not null check (done in (0, 1)),
    person text not null,
    made_at text not null
);
create index work_tick_by_visit on work_tick (visit_id);

-- The car was handed over; a caution that was still open then has a reason.
create table departure (
    id text primary key,
    visit_id text not null references visit (id),
    person text not null,
    made_at text not null
);
create index departure_by_visit on departure (visit_id);

create table departure_reason (
    departure_id text not null references departure (id),
    caution text not null,
    sentence text not null,
    reason text not null,
    primary key (departure_id, caution)
);
