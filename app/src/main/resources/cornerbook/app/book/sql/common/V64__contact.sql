-- What a customer said to being called and written to, by purpose and way: a row for each answer, the last one stands. Only the words
-- may go, when the person's data are erased.
create table contact_answer (
    id text primary key,
    customer_id text not null references customer (id),
    place_in_list integer not null,
    purpose text not null,
    channel text not null check (channel in ('TELEPHONE', 'MESSAGE', 'E_MAIL')),
    agreed integer not null check (agreed in (0, 1)),
    -- What the person was asked, as it was shown or read out.
    words text not null,
    -- Who took the answer.
    person text not null,
    made_at text not null
);
create unique index contact_answer_by_place on contact_answer (customer_id, place_in_list);

-- By which server the shop sends its e-mails; the password is never here.
create table mail_server (
    only_row integer primary key check (only_row = 1),
    host text not null,
    port integer not null check (port between 1 and 65535),
    security text not null check (security in ('STARTTLS', 'TLS', 'NONE')),
    sender text not null,
    -- With which the server is asked to let the shop in; empty where it asks for nothing.
    login text not null
);

-- What was written to a customer, as it went out; what became of it stands in mail_event. Address and text go when the person's data
-- are erased.
create table mail_message (
    id text primary key,
    customer_id text not null references customer (id),
    place_in_list integer not null,
    address text not null,
    language text not null,
    subject text not null,
    body text not null,
    -- The matters that it is about.
    about text not null,
    person text not null,
    made_at text not null
);
create unique index mail_message_by_place on mail_message (customer_id, place_in_list);

create table mail_event (
    mail_id text not null references mail_message (id),
    place_in_list integer not null,
    -- Before the server is asked it is kept that it is: whoever is cut off then knows that it may have been sent.
    event text not null check (event in ('BEGUN', 'TAKEN', 'REFUSED', 'NOT_SENT')),
    -- What the server said.
    answer text not null,
    made_at text not null,
    primary key (mail_id, place_in_list)
);
