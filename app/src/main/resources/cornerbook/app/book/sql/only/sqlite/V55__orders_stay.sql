-- SQLite's own words for: what was ordered, and what became of it, is never changed or deleted.

create trigger order_line_is_never_updated before update on order_line
begin
    select raise(abort, 'an order line is never changed; what became of it is an event');
end;

create trigger order_line_is_never_deleted before delete on order_line
begin
    select raise(abort, 'an order line is never deleted');
end;

create trigger order_event_is_never_updated before update on order_event
begin
    select raise(abort, 'an order event is never changed');
end;

create trigger order_event_is_never_deleted before delete on order_event
begin
    select raise(abort, 'an order event is never deleted');
end;
