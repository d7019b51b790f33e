-- What a customer was told that work would cost. A line of a later estimate stands in the place of the one of its key before.
create table estimate (
    id text primary key,
    visit_id text not null references visit (id),
    place_in_list integer not null,
    language text not null,
    day text not null,
    valid_until text not null,
    place text not null,
    currency text not null,
    person text not null,
    made_at text not null
);
create unique index estimate_by_place on estimate (visit_id, place_in_list);

create table estimate_line (
    estimate_id text not null references estimate (id),
    place_in_list integer not null,
    line_key text not null,
    -- Lines of one estimate of which only one is taken; empty for a line of its own.
    one_of text not null,
    -- The advice of the visit that it comes from; null for other work.
    advice text,
    -- As the customer reads them.
    words text not null,
    detail text not null,
    meaning text not null,
    safety integer not null,
    -- Before taxes; null while it has no price.
    amount text,
    primary key (estimate_id, place_in_list)
);

create table estimate_tax (
    estimate_id text not null references estimate (id),
    place_in_list integer not null,
    name text not null,
    percent text not null,
    registration text not null,
    primary key (estimate_id, place_in_list)
);

-- Where a customer reads it without pairing: who knows the secret may answer, until the day is over.
create table estimate_link (
    id text primary key,
    estimate_id text not null references estimate (id),
    secret_hash text not null unique,
    person text not null,
    made_at text not null
);

-- What the customer said to it. A later one adds to those before; of each line the last answer counts.
create table agreement (
    id text primary key,
    estimate_id text not null references estimate (id),
    place_in_list integer not null,
    way text not null check (way in ('SIGNED', 'LINK', 'TELEPHONE', 'SPOKEN')),
    name text not null,
    -- By what it was said, as a telephone number; may be empty.
    contact text not null,
    language text not null,
    -- Exactly what was agreed to, and its SHA-256.
    words text not null,
    hash text not null,
    -- A path of strokes on a plane of 1000 by 300; null where nothing was drawn.
    signature text,
    person text not null,
    made_at text not null
);
create unique index agreement_by_place on agreement (estimate_id, place_in_list);

create table agreement_answer (
    agreement_id text not null references agreement (id),
    line integer not null,
    agreed integer not null,
    primary key (agreement_id, line)
);
