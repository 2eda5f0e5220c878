import type { SearchView } from '@tiegel/contract';
import { spacedComposition } from '@tiegel/elements';
import { conditionsInWords } from '../input/conditionOptions.ts';
import { wrapped } from '../output/inWords.ts';
import { marksInWords } from '../output/trustMarks.ts';
import type { Compared } from './compared.ts';
import { linesOfGroup } from './linesOfGroup.ts';

/** Alloys side by side for reading; which lines differ is told by signs, for there may be no colour. */
export function* comparisonText({
  alloys,
  groupsForPeople: groups,
  asked,
  conditions,
  prices,
  search,
  asStored,
}: Compared): Generator<string> {
  for (const [at, { composition, rank }] of alloys.entries())
    yield `${at + 1}: ${spacedComposition(composition)} at.%${rankInWords(rank)}\n`;
  const lines = groups.map((group) => ({ head: group.head, lines: linesOfGroup(group) }));
  for (const { head, lines: those } of lines) yield `\n${head}\n${those.join('\n')}\n`;
  const shown = new Set(groups.flatMap(({ rows }) => rows.map(({ id }) => id)));
  yield '\n';
  if (groups.length === 0) yield 'In nothing do they differ by more than little.\n';
  else yield `${wrapped(signsInWords)}\n`;
  if (search !== null) yield `${wrapped(searchInWords(search, asStored))}\n`;
  yield* marksInWords(
    lines.flatMap((one) => one.lines),
    alloys,
    asked.filter(({ id }) => shown.has(id)),
    0,
  );
  yield `${wrapped(`At ${conditionsInWords(conditions)}. Prices of ${prices.date}${prices.invented ? ', invented for demonstration' : ''}. – where there is no value.`)}\n`;
}

function rankInWords(rank: number | null | undefined): string {
  return rank === undefined ? '' : rank === null ? ', not kept' : `, rank ${rank}`;
}

function searchInWords({ id, name, prices }: SearchView, asStored: boolean): string {
  const dated = prices === null ? '' : `, at prices of ${prices.date}`;
  const numbers = asStored
    ? `What it kept has the numbers that it stored${dated}`
    : 'Under other conditions than its own every number is computed anew';
  return `Search ${name === '' ? id : `${id}, ${name}`}: of its limits ✓ met, × not met, neither where nothing can be said. ${numbers}.`;
}

const signsInWords =
  '= alike, ≈ little, ≠ some, ≠≠ much, by how much published alloys differ, from the first quartile to the ' +
  'third: little is less than a quarter of that, much more than all of it; ? where that is not known. Of ' +
  'words, ≠ is any difference. ▲\u00a0highest, ▼\u00a0lowest.';
