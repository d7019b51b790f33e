-- Why a step, or the place of a reading, is left open.
alter table work_tick add column reason text;

-- A photo that was taken at the wrong corner or car stays where it was, struck; this is the same one in its right place. Why, and who
-- said so, stands in visit_change.
alter table photo add column moved_to text;
