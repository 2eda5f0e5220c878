import { spacedComposition } from '@tiegel/elements';
import { conditionsInWords } from '../input/conditionOptions.ts';
import { wrapped } from '../output/inWords.ts';
import { marksInWords } from '../output/trustMarks.ts';
import type { Compared } from './compared.ts';
import { linesOfGroup } from './linesOfGroup.ts';

/** Alloys side by side for reading; which lines differ is told by signs, for there may be no colour. */
export function* comparisonText({ alloys, groups, asked, conditions, prices }: Compared): Generator<string> {
  for (const [at, { composition }] of alloys.entries())
    yield `${at + 1}: ${spacedComposition(composition)} at.%\n`;
  const lines = groups.map((group) => ({ head: group.head, lines: linesOfGroup(group) }));
  for (const { head, lines: those } of lines) yield `\n${head}\n${those.join('\n')}\n`;
  const shown = new Set(groups.flatMap(({ rows }) => rows.map(({ id }) => id)));
  yield '\n';
  if (groups.length === 0) yield 'In nothing do they differ by more than little.\n';
  else yield `${wrapped(signsInWords)}\n`;
  yield* marksInWords(
    lines.flatMap((one) => one.lines),
    alloys,
    asked.filter(({ id }) => shown.has(id)),
    0,
  );
  yield `${wrapped(`At ${conditionsInWords(conditions)}. Prices of ${prices.date}${prices.invented ? ', invented for demonstration' : ''}. – where there is no value.`)}\n`;
}

const signsInWords =
  '= alike, ≈ little, ≠ some, ≠≠ much, by how much published alloys differ, from the first quartile to the ' +
  'third: little is less than a quarter of that, much more than all of it; ? where that is not known. Of ' +
  'words, ≠ is any difference. ▲\u00a0highest, ▼\u00a0lowest.';
