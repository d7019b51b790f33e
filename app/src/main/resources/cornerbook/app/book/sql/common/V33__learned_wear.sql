-- One row for each parameter of the wear model. What was learned by the model before says nothing of this one: the book
-- learns anew when it is opened next.
delete from learned;
drop table learned_wear;

-- All tyre models together stand under the empty name.
create table learned_wear (
    drive text not null check (drive in ('FRONT', 'REAR', 'ALL')),
    season text not null check (season in ('SUMMER', 'WINTER', 'ALL_SEASON')),
    tyre_model text not null,
    cars integer not null,
    readings integer not null,
    primary key (drive, season, tyre_model)
);

create table learned_wear_parameter (
    drive text not null,
    season text not null,
    tyre_model text not null,
    parameter text not null,
    amount double precision not null,
    error double precision not null,
    primary key (drive, season, tyre_model, parameter),
    foreign key (drive, season, tyre_model) references learned_wear (drive, season, tyre_model)
);
