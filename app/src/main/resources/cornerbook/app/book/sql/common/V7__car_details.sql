-- What the models use of a car when somebody has looked it up; null while nobody has.

alter table vehicle add column all_wheel_limit_kind text check (all_wheel_limit_kind in ('TREAD_DEPTH', 'ROLLING_CIRCUMFERENCE'));
alter table vehicle add column all_wheel_limit_mm double precision check ((all_wheel_limit_mm is null) = (all_wheel_limit_kind is null));
alter table vehicle add column same_axle_limit_mm double precision;
alter table vehicle add column deeper_pair_at_rear integer check (deeper_pair_at_rear in (0, 1));
alter table vehicle add column salt_share double precision;
alter table vehicle add column garaged integer check (garaged in (0, 1));
alter table vehicle add column friction_brake_share double precision;
alter table vehicle add column kerb_mass_kg double precision;
alter table vehicle add column front_share double precision;
alter table vehicle add column wheelbase_mm double precision;
alter table vehicle add column track_mm double precision;
alter table vehicle add column brake_fluid_changed_on text;
alter table vehicle add column brake_fluid_interval_years double precision;
alter table vehicle add column pressure_warning text check (pressure_warning in ('DIRECT', 'INDIRECT'));
alter table vehicle add column sensor_learning text check (sensor_learning in ('BY_ITSELF', 'BY_TOOL', 'BY_DRIVING'));
alter table vehicle add column mounting text;

alter table vehicle_axle add column parking_brake text check (parking_brake in ('NONE', 'CABLE', 'DRUM_IN_DISC', 'MOTOR_ON_CALIPER', 'MOTOR_PULLING_CABLES'));
alter table vehicle_axle add column refinish_thickness_mm double precision;
alter table vehicle_axle add column disc_mass_kg double precision;
alter table vehicle_axle add column disc_diameter_mm double precision;
alter table vehicle_axle add column disc_temperature_limit_c double precision;

create table lift_point (
    vehicle_id text not null references vehicle (id),
    corner text not null check (corner in ('LF', 'RF', 'LR', 'RR')),
    behind_front_axle_mm double precision not null,
    left_of_centre_mm double precision not null,
    primary key (vehicle_id, corner)
);

alter table wheel add column mounting text;
alter table wheel add column sensor_type text;
alter table wheel add column sensor_battery_on text;
