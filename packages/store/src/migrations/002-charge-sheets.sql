-- Charge sheets that somebody saved, as JSON. Their numbers stand on paper and on crucibles, so none
-- is given twice (autoincrement) and no row is changed or deleted. `key`: the Idempotency-Key of the
-- request that saved it.
create table charge_sheet (
  number integer primary key autoincrement,
  saved_at text not null,
  key text unique,
  sheet text not null
) strict;
