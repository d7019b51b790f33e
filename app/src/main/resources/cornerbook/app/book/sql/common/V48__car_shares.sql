-- Each car's share in what is learned from all cars, so that learning anew reads the histories of those alone that have changed. A
-- row says what it was taken from: it is old as soon as the car's revision or the program is another.
create table car_share (
    vehicle_id text primary key references vehicle (id),
    revision integer not null,
    -- The form of the next two columns, with a digest of the program that took them.
    program text not null,
    -- What tells of wear, distances and pads.
    learning ${bytes} not null,
    -- The grooves that were read twice unchanged.
    read_twice ${bytes} not null
);
