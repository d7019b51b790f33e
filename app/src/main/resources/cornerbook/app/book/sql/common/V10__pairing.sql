-- Who may work on tablets, and which tablets are paired. No secret is kept, only what proves it.

create table person (
    name text primary key,
    pin_hash text not null
);

create table device (
    id text primary key,
    name text not null,
    person text not null references person (name),
    secret_hash text not null,
    paired_at text not null,
    unpaired_at text
);
