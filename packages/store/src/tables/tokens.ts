import { createHash, randomBytes } from 'node:crypto';
import type { Connection } from '../sharing/connections.ts';

/** A token as it is told: never the token itself, which nobody but its holder has. */
export interface ListedToken {
  name: string;
  role: string;
  givenAt: string;
  /** null while it is in force */
  withdrawnAt: string | null;
}

export interface TokenTable {
  /** Makes a token and returns it; it cannot be told again. null where the name has one in force. */
  give(name: string, role: string, at: string): string | null;
  /** The newest first, withdrawn ones too. */
  list(): ListedToken[];
  /** Takes the token of a name out of force at once; false where it has none. */
  withdraw(name: string, at: string): boolean;
  /** Who holds a token in force; null for any other text. */
  holderOf(token: string): { name: string; role: string } | null;
}

/** So that a token is known for one wherever it turns up, by people and by programs that look for secrets. */
const mark = 'tiegel_';
/** Nobody guesses one of 2^256, so that a plain hash keeps it and refusals need not be slow. */
const secretBytes = 32;

export function tokenTable(durable: Connection): TokenTable {
  const insert = durable.prepare(
    'insert into token (name, role, hash, given_at) values (?, ?, ?, ?) on conflict (name) where withdrawn_at is null do nothing',
  );
  const all = durable.prepare(
    'select name, role, given_at as givenAt, withdrawn_at as withdrawnAt from token order by number desc',
  );
  const end = durable.prepare('update token set withdrawn_at = ? where name = ? and withdrawn_at is null');
  const byHash = durable.prepare('select name, role from token where hash = ? and withdrawn_at is null');
  return {
    give(name, role, at) {
      const token = mark + randomBytes(secretBytes).toString('base64url');
      return insert.run(name, role, hashOf(token), at).changes === 1 ? token : null;
    },
    list: () => all.all() as ListedToken[],
    withdraw: (name, at) => end.run(at, name).changes === 1,
    // Found by its hash: how long that takes tells nothing of the tokens that are kept.
    holderOf: (token) => (byHash.get(hashOf(token)) as { name: string; role: string } | undefined) ?? null,
  };
}

function hashOf(token: string): Buffer {
  return createHash('sha256').update(token).digest();
}
