import type { Role } from '@tiegel/contract';
import { longestHolderName, problem, roles } from '@tiegel/contract/terms';
import type { TokenTable } from '@tiegel/store';

/** Who holds a token, and what they may do. */
export interface Holder {
  name: string;
  role: Role;
}

/** A token as it is told; the token itself only its holder has. */
export interface GivenToken extends Holder {
  /** UTC, ISO 8601 */
  givenAt: string;
  /** null while it is in force */
  withdrawnAt: string | null;
}

/** Who may use a service that asks for tokens. */
export interface Tokens {
  /**
   * Gives somebody a token, which is returned this once.
   * @throws ProblemError access/holder-name, access/holder-known
   */
  give(name: string, role: Role): Holder & { token: string };
  /** The newest first, withdrawn ones too. */
  list(): GivenToken[];
  /** Takes a token out of force at once. @throws ProblemError access/holder-unknown */
  withdraw(name: string): void;
  /** Who holds a token in force; null for any other text. */
  holderOf(token: string): Holder | null;
}

export function openTokens(table: TokenTable): Tokens {
  return {
    give(asTyped, role) {
      const name = holderName(asTyped);
      const token = table.give(name, role, new Date().toISOString());
      if (token === null) throw problem('access/holder-known', { name });
      return { name, role, token };
    },
    list: () => table.list().map(({ role, ...told }) => ({ ...told, role: roleIn(role) })),
    withdraw(asTyped) {
      const name = holderName(asTyped);
      if (!table.withdraw(name, new Date().toISOString())) throw problem('access/holder-unknown', { name });
    },
    holderOf(token) {
      const found = table.holderOf(token);
      return found && { name: found.name, role: roleIn(found.role) };
    },
  };
}

/** One form for a name, however it is typed. */
function holderName(text: string): string {
  const name = text.normalize('NFC').trim();
  const printable = /^[^\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+$/u.test(name);
  if (printable && name.length <= longestHolderName) return name;
  throw problem('access/holder-name', { longest: longestHolderName });
}

/** A role that this release does not know may do what is least. */
function roleIn(text: string): Role {
  return roles.find((role) => role === text) ?? 'reader';
}
