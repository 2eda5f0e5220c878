import type { SearchDifferences } from '@tiegel/contract';
import { wrapped } from './inWords.ts';
import { lineWidth } from './table.ts';

const places = [
  ['there', 'before'],
  ['here', 'after'],
] as const;

/** What two searches have differently, for reading: each place, what the other one has there, and what this one has. */
export function* changesText({ search, other, changes }: SearchDifferences): Generator<string> {
  if (changes.length === 0) return yield 'Nothing: both ask the same of the same data.\n';
  yield `There: ${other}. Here: ${search}.\n`;
  for (const change of changes) {
    yield `\n${wrapped(change.what)}\n`;
    for (const [word, key] of places) {
      const start = `  ${word.padEnd(7)}`;
      const lines = wrapped(change[key] ?? '–', lineWidth - start.length).split('\n');
      yield `${start}${lines.join(`\n${' '.repeat(start.length)}`)}\n`;
    }
  }
}
