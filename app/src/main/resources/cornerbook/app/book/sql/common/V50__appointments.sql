-- What was agreed with customers: each row is an appointment as it stood from then on, and that of the latest turn holds. Nothing is
-- changed or deleted: moved, called off and not come are rows of their own. Whether the car came is told by its visits.
create table appointment (
    id text primary key,
    appointment_id text not null,
    turn integer not null check (turn >= 0),
    vehicle_id text not null references vehicle (id),
    state text not null check (state in ('ASKED', 'BOOKED', 'MISSED', 'CALLED_OFF')),
    day text not null,
    -- The time of day; none for a car that comes at any time.
    starts text,
    work text not null,
    minutes integer not null check (minutes between 1 and 1440),
    hoist text,
    worker text,
    note text not null,
    -- Why it stands so; none for what needs no reason.
    reason text,
    -- Who said so; none where nobody was named.
    person text,
    made_at text not null,
    unique (appointment_id, turn)
);
create index appointment_by_day on appointment (day);
create index appointment_by_vehicle on appointment (vehicle_id);
