import { parseAlloy } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { expect, test } from 'vitest';
import { exampleAlloys } from '../../../src/alloy/entry/exampleAlloys.ts';

test('every example is in the table of published alloys, with phases', () => {
  const symbolsAndShares = (composition: Readonly<Record<string, number>>) =>
    Object.keys(composition)
      .sort()
      .map((symbol) => `${symbol}${composition[symbol]!.toFixed(1)}`)
      .join(' ');
  const known = publishedAlloys()
    .filter(({ reports }) => reports.length > 0)
    .map(({ composition }) => symbolsAndShares(composition));
  for (const example of exampleAlloys) expect(known).toContain(symbolsAndShares(parseAlloy(example)));
});
