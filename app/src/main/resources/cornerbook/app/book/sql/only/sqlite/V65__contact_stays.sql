-- SQLite's own words for: what a customer answered and what was written to one is never changed or deleted, but for what tells of the
-- person.

create trigger contact_answer_is_never_changed before update of id, customer_id, place_in_list, purpose, channel, agreed, person, made_at on contact_answer
begin
    select raise(abort, 'an answer to being called or written to is never changed');
end;

create trigger contact_answer_is_never_deleted before delete on contact_answer
begin
    select raise(abort, 'an answer to being called or written to is never deleted');
end;

create trigger mail_message_is_never_changed before update of id, customer_id, place_in_list, language, about, person, made_at on mail_message
begin
    select raise(abort, 'a message is never changed');
end;

create trigger mail_message_is_never_deleted before delete on mail_message
begin
    select raise(abort, 'a message is never deleted');
end;

create trigger mail_event_is_never_changed before update of mail_id, place_in_list, event, made_at on mail_event
begin
    select raise(abort, 'what became of a message is never changed');
end;

create trigger mail_event_is_never_deleted before delete on mail_event
begin
    select raise(abort, 'what became of a message is never deleted');
end;
