-- What a list shows of each car, so that a page of a big book judges nothing. A row says what it was judged by: it is old as soon
-- as the car's revision or the number of what cars are judged by is another.
create table judged_by (
    only_row integer primary key check (only_row = 1),
    -- Rises when what was learned, the climate or the program is another.
    number integer not null,
    -- A digest of the judges and limits of the program that judged last.
    program text not null
);
insert into judged_by (only_row, number, program) values (1, 1, '');

create table car_verdict (
    vehicle_id text primary key references vehicle (id),
    revision integer not null,
    judged_by integer not null,
    judged_at text not null,
    -- Of the gravest finding of the latest visit; none where nothing was found.
    verdict text,
    urgency text,
    life_left double precision,
    -- Of the fault that kept the car from being judged.
    fault_id text,
    check ((verdict is null) = (urgency is null)),
    check ((verdict is null) = (life_left is null)),
    check (verdict is null or fault_id is null)
);

-- Lists are in these orders, and show a page of them.
create index vehicle_by_name on vehicle (name, id);
create index retorque_open on retorque (due_date, visit_id) where recorded_date is null and superseded_by is null;
-- Nearly all have none: an index of those too is taken for a short way to the open ones, and is the longest.
drop index retorque_by_superseder;
create index retorque_by_superseder on retorque (superseded_by) where superseded_by is not null;
create index retorque_by_record on retorque (recorded_date) where recorded_torque_nm is null;
