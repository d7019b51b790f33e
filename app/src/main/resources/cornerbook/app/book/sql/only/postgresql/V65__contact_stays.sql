-- PostgreSQL's own words for: what a customer answered and what was written to one is never changed or deleted, but for what tells of
-- the person.

create function refuse_change_of_contact() returns trigger language plpgsql as $$
begin
    raise exception 'what a customer answered, and what was written to one, is never changed or deleted';
end;
$$;

create trigger contact_answer_stays before update of id, customer_id, place_in_list, purpose, channel, agreed, person, made_at on contact_answer
for each row execute function refuse_change_of_contact();

create trigger contact_answer_is_never_deleted before delete on contact_answer
for each row execute function refuse_change_of_contact();

create trigger contact_answer_is_never_emptied before truncate on contact_answer
for each statement execute function refuse_change_of_contact();

create trigger mail_message_stays before update of id, customer_id, place_in_list, language, about, person, made_at on mail_message
for each row execute function refuse_change_of_contact();

create trigger mail_message_is_never_deleted before delete on mail_message
for each row execute function refuse_change_of_contact();

create trigger mail_message_is_never_emptied before truncate on mail_message
for each statement execute function refuse_change_of_contact();

create trigger mail_event_stays before update of mail_id, place_in_list, event, made_at on mail_event
for each row execute function refuse_change_of_contact();

create trigger mail_event_is_never_deleted before delete on mail_event
for each row execute function refuse_change_of_contact();

create trigger mail_event_is_never_emptied before truncate on mail_event
for each statement execute function refuse_change_of_contact();
