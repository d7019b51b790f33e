-- A rival was measured too: it is never updated or deleted.

create trigger rival_reading_is_never_updated before update on rival_reading
begin
    select raise(abort, 'a reading is never changed; a correction is a new reading');
end;

create trigger rival_reading_is_never_deleted before delete on rival_reading
begin
    select raise(abort, 'a reading is never deleted');
end;
