-- SQLite's own words for: what was said of the store is never changed or deleted.

create trigger store_rack_is_never_updated before update on store_rack
begin
    select raise(abort, 'a row of store_rack is never changed; what came later is another row');
end;

create trigger store_rack_is_never_deleted before delete on store_rack
begin
    select raise(abort, 'a row of store_rack is never deleted; what came later is another row');
end;

create trigger set_move_is_never_updated before update on set_move
begin
    select raise(abort, 'a row of set_move is never changed; what came later is another row');
end;

create trigger set_move_is_never_deleted before delete on set_move
begin
    select raise(abort, 'a row of set_move is never deleted; what came later is another row');
end;

create trigger set_intake_is_never_updated before update on set_intake
begin
    select raise(abort, 'a row of set_intake is never changed; what came later is another row');
end;

create trigger set_intake_is_never_deleted before delete on set_intake
begin
    select raise(abort, 'a row of set_intake is never deleted; what came later is another row');
end;

create trigger stock_count_is_never_updated before update on stock_count
begin
    select raise(abort, 'a row of stock_count is never changed; what came later is another row');
end;

create trigger stock_count_is_never_deleted before delete on stock_count
begin
    select raise(abort, 'a row of stock_count is never deleted; what came later is another row');
end;

create trigger stock_scan_is_never_updated before update on stock_scan
begin
    select raise(abort, 'a row of stock_scan is never changed; what came later is another row');
end;

create trigger stock_scan_is_never_deleted before delete on stock_scan
begin
    select raise(abort, 'a row of stock_scan is never deleted; what came later is another row');
end;

create trigger stock_count_end_is_never_updated before update on stock_count_end
begin
    select raise(abort, 'a row of stock_count_end is never changed; what came later is another row');
end;

create trigger stock_count_end_is_never_deleted before delete on stock_count_end
begin
    select raise(abort, 'a row of stock_count_end is never deleted; what came later is another row');
end;

create trigger stock_difference_is_never_updated before update on stock_difference
begin
    select raise(abort, 'a row of stock_difference is never changed; what came later is another row');
end;

create trigger stock_difference_is_never_deleted before delete on stock_difference
begin
    select raise(abort, 'a row of stock_difference is never deleted; what came later is another row');
end;

create trigger stock_answer_is_never_updated before update on stock_answer
begin
    select raise(abort, 'a row of stock_answer is never changed; what came later is another row');
end;

create trigger stock_answer_is_never_deleted before delete on stock_answer
begin
    select raise(abort, 'a row of stock_answer is never deleted; what came later is another row');
end;
