-- Where calendars read the appointments: one address for the shop, whose name is empty, and one for each person who wants one. Of the
-- secret in the address stands its SHA-256 alone. It is what holds now: a new one takes the place of the last, one withdrawn is gone.
create table calendar_address (
    whose text primary key,
    secret_hash text not null,
    language text not null,
    made_at text not null
);
