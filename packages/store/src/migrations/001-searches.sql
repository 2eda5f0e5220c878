-- A search as it was asked for, and where it stands. `number` is the key inside the database (small,
-- for the many rows that carry it), `id` the one that people see; rows are never deleted, so that
-- an id is never given twice. `sequence` grows by one with every change that a reader could see.
create table search (
  number integer primary key,
  id text not null unique,
  idempotency_key text unique,
  specification text not null,
  plan text not null,
  question text not null,
  columns text not null,
  prices text,
  systems integer not null,
  points integer not null,
  state text not null,
  reason text,
  notices text not null,
  sequence integer not null default 1,
  counts text not null,
  kept integer not null default 0,
  active_seconds real not null default 0,
  preparation_seconds real not null,
  storing_seconds real,
  created_at text not null,
  finished_at text
) strict;

-- The ledger. A chunk is unfinished until its outcome is taken, once.
create table chunk (
  search integer not null references search (number),
  ordinal integer not null,
  first_system integer not null,
  end_system integer not null,
  first_point integer not null,
  end_point integer,
  points integer not null,
  finished integer not null default 0,
  failures integer not null default 0,
  primary key (search, ordinal)
) strict, without rowid;

create index chunk_unfinished on chunk (search, ordinal) where finished = 0;

-- What finished chunks found. Ordinal -1 holds many outcomes merged into one.
create table outcome (
  search integer not null references search (number),
  ordinal integer not null,
  bytes blob not null,
  primary key (search, ordinal)
) strict;

-- The kept grid points, best first. Columns of quantities (q_...) are added at opening, for the
-- ids are told to this package. `system`: symbols, alphabetical, with spaces between; `parts`:
-- integers of the grid in the same order. A plain row table with an index of its own: rows of a
-- search lie together in the order of rank, and a scan of them reads the file in sequence.
create table candidate (
  search integer not null references search (number),
  rank integer not null,
  system text not null,
  parts text not null,
  score real
) strict;

create unique index candidate_rank on candidate (search, rank);

-- The candidates of a large search in one order, as rows: place 0 is the first. An index of SQLite
-- would hold the candidates of all searches and be filled at random places; these rows are written
-- once, in their order, for the one search that is asked. `valued`: how many have a value; they
-- come before those that have none. Direction: asc or desc.
create table candidate_order (
  number integer primary key,
  search integer not null references search (number),
  name text not null,
  direction text not null,
  valued integer not null,
  unique (search, name, direction)
) strict;

create table candidate_place (
  ordering integer not null,
  place integer not null,
  rank integer not null,
  primary key (ordering, place)
) strict, without rowid;

-- Price lists that a person entered; the newest is in force.
create table price_list (
  number integer primary key autoincrement,
  entered_at text not null,
  list text not null
) strict;
