-- The shop's price list. A row is never changed: what a thing costs is said by the last row that has begun.
create table price (
    id text primary key,
    item text not null check (item in ('HOUR', 'JOB', 'TYRE', 'PART')),
    -- Of a job its name; of a tyre its season; else empty.
    kind text not null,
    -- Of a tyre its size; of a part what the shop calls it; else empty.
    name text not null,
    -- Which one of several of that size; empty where there is one.
    offer text not null,
    place_in_list integer not null,
    -- Of a job; null where it takes none of its own.
    minutes integer check (minutes >= 0),
    -- Written out to its smallest coin, with the code of its currency behind it; null where nothing is charged.
    amount text,
    -- Tread of a new tyre, mm; null where it is not known.
    new_tread double precision,
    begins text not null,
    person text not null,
    made_at text not null
);
create unique index price_by_place on price (item, kind, name, offer, place_in_list);

-- Whose taxes the shop's papers bear, and in which coin. The last row that has begun counts.
create table tax_place (
    id text primary key,
    place_in_list integer not null unique,
    place text not null,
    currency text not null,
    begins text not null,
    person text not null,
    made_at text not null
);

-- Its taxes as papers name them.
create table shop_tax (
    tax_place_id text not null references tax_place (id),
    place_in_list integer not null,
    name text not null,
    -- Null where it is the one on file.
    percent text,
    -- Under which the shop collects it; may be empty.
    registration text not null,
    primary key (tax_place_id, place_in_list)
);
