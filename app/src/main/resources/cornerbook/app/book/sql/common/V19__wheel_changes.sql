-- What stood in the book of a wheel before it was put right. Append-only; each line is one value.
create table wheel_change (
    vehicle_id text not null references vehicle (id),
    place_in_list integer not null,
    tag text not null,
    what text not null,
    before_text text,
    after_text text,
    changed_on text not null,
    primary key (vehicle_id, place_in_list)
);
