-- A rival was measured too: it is never updated or deleted.

create trigger rival_reading_is_never_updated before update on rival_reading
for each row execute function refuse_change_of_reading();

create trigger rival_reading_is_never_deleted before delete on rival_reading
for each row execute function refuse_change_of_reading();

create trigger rival_readings_are_never_emptied before truncate on rival_reading
for each statement execute function refuse_change_of_reading();
