-- Why a step, or the place of a reading, is left open.
alter table work_tick add column reason text;
