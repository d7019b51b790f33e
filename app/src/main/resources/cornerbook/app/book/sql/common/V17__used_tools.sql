-- Hoists beside wrenches and gauges, the tools that a visit was worked with, and what of the car bears on lifting it.

create table kept_tool (
    id text primary key,
    kind text not null check (kind in ('TORQUE_WRENCH', 'PRESSURE_GAUGE', 'HOIST')),
    name text not null,
    lowest double precision not null,
    highest double precision not null,
    amount_too_much double precision not null,
    calibration_due text not null,
    arm_count integer,
    hoist_rating_kg double precision,
    front_arm_rating_kg double precision,
    rear_arm_rating_kg double precision,
    adapter_heights_mm text,
    block_heights_mm text,
    check ((kind = 'HOIST') = (arm_count is not null))
);
insert into kept_tool (id, kind, name, lowest, highest, amount_too_much, calibration_due)
    select id, kind, name, lowest, highest, amount_too_much, calibration_due from shop_tool;
drop table shop_tool;
alter table kept_tool rename to shop_tool;

-- The tool as it was on the day. Another choice is another row; the last one of a kind counts, one without a tool takes it back.
create table visit_tool (
    id text primary key,
    visit_id text not null references visit (id),
    place_in_list integer not null,
    kind text not null check (kind in ('TORQUE_WRENCH', 'PRESSURE_GAUGE', 'HOIST')),
    tool_id text,
    name text,
    lowest double precision,
    highest double precision,
    amount_too_much double precision,
    calibration_due text,
    arm_count integer,
    hoist_rating_kg double precision,
    front_arm_rating_kg double precision,
    rear_arm_rating_kg double precision,
    adapter_heights_mm text,
    block_heights_mm text,
    unique (visit_id, place_in_list)
);

alter table vehicle add column ground_clearance_mm double precision;
alter table vehicle add column lift_point_height_mm double precision;
alter table vehicle add column wheel_mass_kg double precision;
