import { readFileSync } from 'node:fs';
import type { SearchCase } from './searchCase.ts';

export const corpusFile = new URL('../fixtures/corpus.ndjson', import.meta.url);

/** The kept cases, a line of JSON each. */
export function corpus(): SearchCase[] {
  return readFileSync(corpusFile, 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
}
