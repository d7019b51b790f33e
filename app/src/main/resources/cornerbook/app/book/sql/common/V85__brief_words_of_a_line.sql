-- What a line of an estimate is about, without why; null in a line that an older program kept.
alter table estimate_line add column brief text;
