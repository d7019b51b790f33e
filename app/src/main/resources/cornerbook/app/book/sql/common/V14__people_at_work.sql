-- Who works on which tablet, how people want their pages, who took a reading at a tablet, and the rules of the shop.

-- People who have typed their PIN on a tablet; the one of the latest turn works on it now.
create table device_person (
    device_id text not null references device (id),
    person text not null references person (name),
    turn integer not null,
    primary key (device_id, person)
);
insert into device_person (device_id, person, turn) select id, person, 1 from device;

create table preference (
    person text primary key references person (name),
    units text not null check (units in ('METRIC', 'US')),
    look text not null check (look in ('DEVICE', 'LIGHT', 'DARK')),
    walk text not null
);

create table reading_author (
    reading_id text primary key references reading (id),
    person text not null,
    made_at text not null
);

-- A rule that is here holds.
create table shop_rule (
    rule text primary key check (rule in ('SECOND_CHECK'))
);
