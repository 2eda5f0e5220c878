import type { Shortlist, ShortlistEntry } from '@tiegel/contract';
import { conflictsOf } from '@tiegel/contract/terms';
import { parseAlloy, spacedComposition } from '@tiegel/elements';
import { fittedTable } from './fittedTable.ts';
import { wrapped } from './inWords.ts';
import { lineWidth } from './table.ts';

/** A shortlist for reading, or several as a table. */
export function* shortlistText(found: Shortlist | Shortlist[]): Generator<string> {
  if (Array.isArray(found)) yield `${many(found).join('\n')}\n`;
  else yield* one(found);
}

function many(lists: readonly Shortlist[]): string[] {
  if (lists.length === 0) return ['There is no shortlist yet: begin one with "shortlist begin NAME".'];
  return fittedTable(
    [
      { head: 'id', align: 'left' },
      { head: 'alloys' },
      { head: 'begun', align: 'left' },
      { head: 'name', align: 'left' },
    ],
    lists.map(({ id, createdAt, name, entries }) => [
      id,
      String(standing(entries).length),
      createdAt.slice(0, 10),
      name.value,
    ]),
  );
}

function* one({ id, name, entries, sequence }: Shortlist): Generator<string> {
  yield `${name.value} (${id}, change ${sequence})\n`;
  for (const entry of standing(entries)) yield* lines(entry);
  if (conflictsOf({ entries }).length > 0) yield `\nOpen conflicts: shortlist conflicts ${id}\n`;
}

function* lines({ entry, status, addedBy, addedAt, notes, removed }: ShortlistEntry): Generator<string> {
  const rivals = status.rivals.map(({ value, by }) => `; ${by}: ${value}`).join('');
  yield `\n${spacedComposition(parseAlloy(entry))}\n`;
  yield `  ${status.value}${rivals}, added by ${addedBy} on ${addedAt.slice(0, 10)}\n`;
  for (const { by } of removed.rivals) yield `  ${by} took it off while another wrote on it\n`;
  for (const { text, by, at } of notes) {
    yield `  ${wrapped(`${at.slice(0, 10)} ${by}: ${text}`, lineWidth - 2).replaceAll('\n', '\n  ')}\n`;
  }
}

function standing(entries: readonly ShortlistEntry[]): ShortlistEntry[] {
  return entries.filter(({ removed }) => !removed.value);
}
