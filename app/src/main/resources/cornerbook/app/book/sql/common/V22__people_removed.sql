-- Whoever has left the shop cannot sign in any more and is not offered; what they did keeps their name.
alter table person add column removed_at text;
