import { roleInWords } from '@tiegel/contract/terms';
import type { GivenToken, Holder } from '@tiegel/search/laboratory';
import { fittedTable } from './fittedTable.ts';
import { wrapped } from './inWords.ts';

/** A token that was given out, alone on its line, and what to do with it. */
export function* givenText({ name, role, token }: Holder & { token: string }): Generator<string> {
  const said =
    `The token of ${name}, who may ${roleInWords(role)}. It is told this once and kept nowhere: hand it over by a way that nobody ` +
    'else reads. It signs in on the page; for the terminal, set TIEGEL_TOKEN to it.';
  yield `${token}\n\n${wrapped(said)}\n`;
}

/** Who has a token, a line each. */
export function* tokensText(all: readonly GivenToken[]): Generator<string> {
  if (all.length === 0) {
    yield 'Nobody has a token of this database yet: give one out by "access give NAME --role ROLE".\n';
    return;
  }
  yield `${fittedTable(
    [
      { head: 'name', align: 'left' },
      { head: 'role', align: 'left' },
      { head: 'given', unit: 'UTC', align: 'left' },
      { head: 'withdrawn', unit: 'UTC', align: 'left' },
    ],
    all.map(({ name, role, givenAt, withdrawnAt }) => [name, role, minute(givenAt), minute(withdrawnAt)]),
  ).join('\n')}\n`;
}

function minute(at: string | null): string | null {
  return at === null ? null : at.slice(0, 16).replace('T', ' ');
}
