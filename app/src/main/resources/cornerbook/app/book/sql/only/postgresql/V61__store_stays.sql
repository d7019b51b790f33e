-- PostgreSQL's own words for: what was said of the store is never changed or deleted.

create function refuse_change_of_store() returns trigger language plpgsql as $$
begin
    raise exception 'a row of the store is never changed or deleted; what came later is another row';
end;
$$;

create trigger store_rack_stays before update or delete on store_rack
for each row execute function refuse_change_of_store();

create trigger store_rack_is_never_emptied before truncate on store_rack
for each statement execute function refuse_change_of_store();

create trigger set_move_stays before update or delete on set_move
for each row execute function refuse_change_of_store();

create trigger set_move_is_never_emptied before truncate on set_move
for each statement execute function refuse_change_of_store();

create trigger set_intake_stays before update or delete on set_intake
for each row execute function refuse_change_of_store();

create trigger set_intake_is_never_emptied before truncate on set_intake
for each statement execute function refuse_change_of_store();

create trigger stock_count_stays before update or delete on stock_count
for each row execute function refuse_change_of_store();

create trigger stock_count_is_never_emptied before truncate on stock_count
for each statement execute function refuse_change_of_store();

create trigger stock_scan_stays before update or delete on stock_scan
for each row execute function refuse_change_of_store();

create trigger stock_scan_is_never_emptied before truncate on stock_scan
for each statement execute function refuse_change_of_store();

create trigger stock_count_end_stays before update or delete on stock_count_end
for each row execute function refuse_change_of_store();

create trigger stock_count_end_is_never_emptied before truncate on stock_count_end
for each statement execute function refuse_change_of_store();

create trigger stock_difference_stays before update or delete on stock_difference
for each row execute function refuse_change_of_store();

create trigger stock_difference_is_never_emptied before truncate on stock_difference
for each statement execute function refuse_change_of_store();

create trigger stock_answer_stays before update or delete on stock_answer
for each row execute function refuse_change_of_store();

create trigger stock_answer_is_never_emptied before truncate on stock_answer
for each statement execute function refuse_change_of_store();
