-- Who may use a service that asks for tokens. Only the SHA-256 of a token is kept: whoever reads this file
-- cannot use the service by it. A row stays when its token is withdrawn, so that its name says who did what.
create table token (
  number integer primary key autoincrement,
  name text not null,
  role text not null,
  hash blob not null unique,
  given_at text not null,
  withdrawn_at text
) strict;

-- One name, one token in force.
create unique index token_in_force on token (name) where withdrawn_at is null;
