-- What was charged. Numbers go up by one and have no gap; nothing is changed, a credit note gives back.
create table bill (
    number integer primary key check (number > 0),
    id text not null unique,
    -- Of a credit note the bill that it gives back.
    credits integer unique references bill (number),
    visit_id text not null references visit (id),
    language text not null,
    day text not null,
    place text not null,
    currency text not null,
    -- Of a credit note, why; else empty.
    reason text not null,
    person text not null,
    made_at text not null
);
create index bill_by_visit on bill (visit_id);

create table bill_line (
    bill_number integer not null references bill (number),
    place_in_list integer not null,
    -- The matter that was agreed; null for what was added within what the place allows.
    line_key text,
    words text not null,
    detail text not null,
    amount text not null,
    primary key (bill_number, place_in_list)
);

create table bill_tax (
    bill_number integer not null references bill (number),
    place_in_list integer not null,
    name text not null,
    percent text not null,
    registration text not null,
    amount text not null,
    primary key (bill_number, place_in_list)
);

create table bill_payment (
    id text primary key,
    bill_number integer not null references bill (number),
    place_in_list integer not null,
    way text not null check (way in ('CASH', 'CARD', 'TRANSFER', 'CHEQUE')),
    amount text not null,
    paid_on text not null,
    person text not null,
    made_at text not null
);
create unique index bill_payment_by_place on bill_payment (bill_number, place_in_list);
