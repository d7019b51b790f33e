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

create trigger trusted_key_is_never_updated before update on trusted_key
begin
    select raise(abort, 'a row of trusted_key is never changed; what came later is another row');
end;

create trigger trusted_key_is_never_deleted before delete on trusted_key
begin
    select raise(abort, 'a row of trusted_key is never deleted; what came later is another row');
end;

-- What was taken in of other shops' knowledge, and when it was taken back: the last row counts.
create table taken_knowledge (
    id text primary key,
    place_in_list integer not null unique,
    -- The signed file as it came; null from when on none counts.
    file text,
    person text not null,
    made_at text not null
);

create trigger taken_knowledge_is_never_updated before update on taken_knowledge
begin
    select raise(abort, 'a row of taken_knowledge is never changed; what came later is another row');
end;

create trigger taken_knowledge_is_never_deleted before delete on taken_knowledge
begin
    select raise(abort, 'a row of taken_knowledge is never deleted; what came later is another row');
end;

-- Beside which the book learned last; null when beside none.
alter table learned add column taken_id text references taken_knowledge (id);
-- As the shop called who signed it then; null when beside none.
alter table learned add column signed_by text;
