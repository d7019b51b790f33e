-- An axle may have drums, of which the columns of a disc say nothing; and a car may be known as a hybrid.

alter table vehicle add column hybrid integer check (hybrid in (0, 1));

create table axle_with_drums (
    vehicle_id text not null references vehicle (id),
    axle text not null check (axle in ('FRONT', 'REAR')),
    axle_load_kg double precision not null,
    tyre_size text not null,
    load_index integer not null,
    speed_symbol text not null,
    placard_pressure_kpa double precision not null,
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
    check ((caliper is null) = (drum_new_mm is not null))
);

insert into axle_with_drums (
    vehicle_id, axle, axle_load_kg, tyre_size, load_index, speed_symbol, placard_pressure_kpa, caliper, electric_parking_brake,
    pad_new_mm, pad_minimum_mm, disc_new_mm, disc_minimum_mm, runout_limit_mm, thickness_variation_limit_mm, parking_brake,
    refinish_thickness_mm, disc_mass_kg, disc_diameter_mm, disc_temperature_limit_c)
select
    vehicle_id, axle, axle_load_kg, tyre_size, load_index, speed_symbol, placard_pressure_kpa, caliper, electric_parking_brake,
    pad_new_mm, pad_minimum_mm, disc_new_mm, disc_minimum_mm, runout_limit_mm, thickness_variation_limit_mm, parking_brake,
    refinish_thickness_mm, disc_mass_kg, disc_diameter_mm, disc_temperature_limit_c
from vehicle_axle;

drop table vehicle_axle;
alter table axle_with_drums rename to vehicle_axle;
