-- PostgreSQL's own words for: nothing measured is ever updated or deleted.

create function refuse_change_of_reading() returns trigger language plpgsql as $$
begin
    if tg_op = 'UPDATE' then
        raise exception 'a reading is never changed; a correction is a new reading';
    end if;
    raise exception 'a reading is never deleted';
end;
$$;

create trigger reading_is_never_updated before update on reading
for each row execute function refuse_change_of_reading();

create trigger reading_is_never_deleted before delete on reading
for each row execute function refuse_change_of_reading();

create trigger readings_are_never_emptied before truncate on reading
for each statement execute function refuse_change_of_reading();
