-- At the door little is known of a car: what nobody has looked up yet is null. A column that may be empty takes the place of one
-- that may not.

alter table vehicle add column known_drive text check (known_drive in ('FRONT', 'REAR', 'ALL'));
update vehicle set known_drive = drive;
alter table vehicle drop column drive;
alter table vehicle rename column known_drive to drive;

alter table vehicle add column known_electric integer check (known_electric in (0, 1));
update vehicle set known_electric = electric;
alter table vehicle drop column electric;
alter table vehicle rename column known_electric to electric;

alter table vehicle add column known_fastener_thread text;
update vehicle set known_fastener_thread = fastener_thread;
alter table vehicle drop column fastener_thread;
alter table vehicle rename column known_fastener_thread to fastener_thread;

alter table vehicle add column known_fastener_count integer;
update vehicle set known_fastener_count = fastener_count;
alter table vehicle drop column fastener_count;
alter table vehicle rename column known_fastener_count to fastener_count;

alter table vehicle add column known_fastener_seat text;
update vehicle set known_fastener_seat = fastener_seat;
alter table vehicle drop column fastener_seat;
alter table vehicle rename column known_fastener_seat to fastener_seat;

alter table vehicle add column known_fastener_torque_nm double precision;
update vehicle set known_fastener_torque_nm = fastener_torque_nm;
alter table vehicle drop column fastener_torque_nm;
alter table vehicle rename column known_fastener_torque_nm to fastener_torque_nm;

alter table vehicle add column known_retorque_after_km double precision;
update vehicle set known_retorque_after_km = retorque_after_km;
alter table vehicle drop column retorque_after_km;
alter table vehicle rename column known_retorque_after_km to retorque_after_km;

alter table vehicle add column known_battery_chemistry text;
update vehicle set known_battery_chemistry = battery_chemistry;
alter table vehicle drop column battery_chemistry;
alter table vehicle rename column known_battery_chemistry to battery_chemistry;

alter table vehicle add column known_battery_capacity_ah double precision;
update vehicle set known_battery_capacity_ah = battery_capacity_ah;
alter table vehicle drop column battery_capacity_ah;
alter table vehicle rename column known_battery_capacity_ah to battery_capacity_ah;

alter table wheel add column known_tyre_model text;
update wheel set known_tyre_model = tyre_model;
alter table wheel drop column tyre_model;
alter table wheel rename column known_tyre_model to tyre_model;

alter table wheel add column known_load_index integer;
update wheel set known_load_index = load_index;
alter table wheel drop column load_index;
alter table wheel rename column known_load_index to load_index;

alter table wheel add column known_speed_symbol text;
update wheel set known_speed_symbol = speed_symbol;
alter table wheel drop column speed_symbol;
alter table wheel rename column known_speed_symbol to speed_symbol;

alter table wheel add column known_directional integer check (known_directional in (0, 1));
update wheel set known_directional = directional;
alter table wheel drop column directional;
alter table wheel rename column known_directional to directional;

alter table wheel add column known_asymmetric integer check (known_asymmetric in (0, 1));
update wheel set known_asymmetric = "asymmetric";
alter table wheel drop column "asymmetric";
alter table wheel rename column known_asymmetric to "asymmetric";

alter table wheel add column known_new_depth_mm double precision check (known_new_depth_mm > 0);
update wheel set known_new_depth_mm = new_depth_mm;
alter table wheel drop column new_depth_mm;
alter table wheel rename column known_new_depth_mm to new_depth_mm;

create table axle_as_known (
    vehicle_id text not null references vehicle (id),
    axle text not null check (axle in ('FRONT', 'REAR')),
    axle_load_kg double precision,
    tyre_size text not null,
    load_index integer,
    speed_symbol text,
    placard_pressure_kpa double precision,
    caliper text,
    electric_parking_brake integer not null check (electric_parking_brake in (0, 1)),
    pad_new_mm double precision,
    pad_minimum_mm double precision,
    disc_new_mm double precision,
    disc_minimum_mm double precision,
    runout_limit_mm double precision,
    thickness_variation_limit_mm double precision,
    parking_brake text check (parking_brake in ('NONE', 'CABLE', 'DRUM_IN_DISC', 'MOTOR_ON_CALIPER', 'MOTOR_PULLING_CABLES')),
    refinish_thickness_mm double precision,
    disc_mass_kg double precision,
    disc_diameter_mm double precision,
    disc_temperature_limit_c double precision,
    pistons integer,
    drum_new_mm double precision,
    drum_discard_mm double precision,
    lining_new_mm double precision,
    lining_minimum_mm double precision,
    primary key (vehicle_id, axle),
    check (caliper is null or drum_new_mm is null)
);

insert into axle_as_known (
    vehicle_id, axle, axle_load_kg, tyre_size, load_index, speed_symbol, placard_pressure_kpa, caliper, electric_parking_brake,
    pad_new_mm, pad_minimum_mm, disc_new_mm, disc_minimum_mm, runout_limit_mm, thickness_variation_limit_mm, parking_brake,
    refinish_thickness_mm, disc_mass_kg, disc_diameter_mm, disc_temperature_limit_c, pistons, drum_new_mm, drum_discard_mm,
    lining_new_mm, lining_minimum_mm)
select
    vehicle_id, axle, axle_load_kg, tyre_size, load_index, speed_symbol, placard_pressure_kpa, caliper, electric_parking_brake,
    pad_new_mm, pad_minimum_mm, disc_new_mm, disc_minimum_mm, runout_limit_mm, thickness_variation_limit_mm, parking_brake,
    refinish_thickness_mm, disc_mass_kg, disc_diameter_mm, disc_temperature_limit_c, pistons, drum_new_mm, drum_discard_mm,
    lining_new_mm, lining_minimum_mm
from vehicle_axle;

drop table vehicle_axle;
alter table axle_as_known rename to vehicle_axle;

-- The car of the same kind, or the data sheet, that data were copied from.
alter table vehicle add column copied_from text;

-- What was read at the wrong car stays where it was entered, struck; moved_to is the same reading at the right car, null for one that
-- had been corrected already. Why, and who said so, stands in visit_change.
create table moved_reading (
    reading_id text primary key references reading (id),
    moved_to text references reading (id)
);
