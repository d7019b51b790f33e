-- The shop's torque wrenches and pressure gauges. Ranges and offsets in N·m or kPa, by the kind.
create table shop_tool (
    id text primary key,
    kind text not null check (kind in ('TORQUE_WRENCH', 'PRESSURE_GAUGE')),
    name text not null,
    lowest double precision not null,
    highest double precision not null,
    amount_too_much double precision not null,
    calibration_due text not null
);
