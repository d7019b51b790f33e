-- SQLite's own words for: nothing measured is ever updated or deleted.

create trigger reading_is_never_updated before update on reading
begin
    select raise(abort, 'a reading is never changed; a correction is a new reading');
end;

create trigger reading_is_never_deleted before delete on reading
begin
    select raise(abort, 'a reading is never deleted');
end;
