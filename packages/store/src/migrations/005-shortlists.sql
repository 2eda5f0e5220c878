-- Shortlists as the changes that people made to them, in the order in which they were taken. Rows are
-- only ever added, so that nothing that anybody wrote is lost. `key`: made up by who changes; a
-- change that comes twice counts once.
create table shortlist (
  number integer primary key autoincrement,
  id text not null unique,
  created_at text not null
) strict;

create table shortlist_change (
  shortlist text not null references shortlist (id),
  sequence integer not null,
  key text not null,
  at text not null,
  change text not null,
  primary key (shortlist, sequence),
  unique (shortlist, key)
) strict, without rowid;
