-- How the lining of a drum brake's shoes is fastened, and when the shoes of a parking brake inside the disc are replaced; null while
-- nobody has looked.

alter table vehicle_axle add column lining_riveted integer check (lining_riveted in (0, 1));
alter table vehicle_axle add column parking_lining_minimum_mm double precision;
