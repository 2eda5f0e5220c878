import type { Shortlist } from '@tiegel/contract';
import { conflictsOf, type ShortlistVersion } from '@tiegel/contract/terms';
import { parseAlloy, spacedComposition } from '@tiegel/elements';
import { table } from './table.ts';

/** Open conflicts for reading: what each set, who, when; and how one of it is kept. */
export function* conflictsText(lists: readonly Shortlist[]): Generator<string> {
  const open = lists.filter((list) => conflictsOf(list).length > 0);
  if (open.length === 0) yield 'There is no open conflict.\n';
  for (const list of open) {
    yield `${list.name.value} (${list.id}, change ${list.sequence})\n`;
    for (const { entry, about, versions } of conflictsOf(list)) {
      yield `\n${spacedComposition(parseAlloy(entry))}: ${about}\n`;
      for (const line of lines(versions)) yield `  ${line}\n`;
    }
    yield `\nKeep one: shortlist settle ${list.id} ALLOY VERSION\n`;
  }
}

function lines(versions: readonly ShortlistVersion[]): string[] {
  const columns = ['version', 'by', 'at (UTC)', ''].map((head) => ({ head, align: 'left' as const }));
  return table(
    columns,
    versions.map(({ value, by, at, holds }) => [
      value,
      by,
      at.slice(0, 16).replace('T', ' '),
      holds ? 'holds until it is settled' : '',
    ]),
  );
}
