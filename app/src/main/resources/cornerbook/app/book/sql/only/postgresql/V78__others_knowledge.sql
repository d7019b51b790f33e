-- Keys by which other shops' knowledge is signed, as this shop trusts them: what was said last of a key counts.
create table trusted_key (
    id text primary key,
    place_in_list integer not null unique,
    -- SubjectPublicKeyInfo, Base64.
    public_key text not null,
    -- Of who signs by it, as this shop calls them.
    name text not null check (name <> ''),
    trusted integer not null check (trusted in (0, 1)),
    person text not null,
    made_at text not null
);

-- What was taken in of other shops' knowledge, and when it was taken back: the last row counts.
create table taken_knowledge (
    id text primary key,
    place_in_list integer not null unique,
    -- The signed file as it came; null from when on none counts.
    file text,
    person text not null,
    made_at text not null
);

create function refuse_change_of_knowledge() returns trigger language plpgsql as $$
begin
    raise exception 'a trusted key or taken knowledge is never changed or deleted; what came later is another row';
end;
$$;

create trigger trusted_key_stays before update or delete on trusted_key
for each row execute function refuse_change_of_knowledge();

create trigger trusted_key_is_never_emptied before truncate on trusted_key
for each statement execute function refuse_change_of_knowledge();

create trigger taken_knowledge_stays before update or delete on taken_knowledge
for each row execute function refuse_change_of_knowledge();

create trigger taken_knowledge_is_never_emptied before truncate on taken_knowledge
for each statement execute function refuse_change_of_knowledge();

-- Beside which the book learned last; null when beside none.
alter table learned add column taken_id text references taken_knowledge (id);
-- As the shop called who signed it then; null when beside none.
alter table learned add column signed_by text;
