-- PostgreSQL's own words for: what was ordered, and what became of it, is never changed or deleted.

create function refuse_change_of_order() returns trigger language plpgsql as $$
begin
    raise exception 'an order line or event is never changed or deleted; what became of it is another event';
end;
$$;

create trigger order_line_stays before update or delete on order_line
for each row execute function refuse_change_of_order();

create trigger order_lines_are_never_emptied before truncate on order_line
for each statement execute function refuse_change_of_order();

create trigger order_event_stays before update or delete on order_event
for each row execute function refuse_change_of_order();

create trigger order_events_are_never_emptied before truncate on order_event
for each statement execute function refuse_change_of_order();
