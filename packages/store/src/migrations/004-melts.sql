-- Melts that somebody recorded, as JSON, with every earlier version. `number` orders them, `id` is
-- the one that people see; a deleted melt stays, so that deleting can be undone and no id is given
-- twice. `key`: the Idempotency-Key of the request that recorded it.
create table melt (
  number integer primary key autoincrement,
  id text not null unique,
  key text unique,
  version integer not null,
  created_at text not null,
  changed_at text not null,
  deleted_at text,
  entry text not null
) strict;

create table melt_version (
  melt text not null references melt (id),
  version integer not null,
  at text not null,
  entry text not null,
  primary key (melt, version)
) strict, without rowid;

-- Files of a melt; what is in them lies in the folder beside the database, under the id.
create table melt_attachment (
  number integer primary key autoincrement,
  id text not null unique,
  melt text not null references melt (id),
  name text not null,
  type text not null,
  size integer not null,
  added_at text not null,
  removed_at text
) strict;

create index melt_attachment_melt on melt_attachment (melt);
