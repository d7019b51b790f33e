-- What stood in the book of a visit's date or odometer before it was put right. Append-only; each line is one value.
create table visit_change (
    vehicle_id text not null references vehicle (id),
    place_in_list integer not null,
    visit_id text not null references visit (id),
    what text not null,
    before_text text not null,
    after_text text not null,
    reason text not null,
    changed_on text not null,
    primary key (vehicle_id, place_in_list)
);
