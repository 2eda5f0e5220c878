import { decimalsOf } from '@tiegel/charge';
import { fixedDecimals, limitInWords } from '@tiegel/contract/terms';
import { type Composition, type PriceList, spacedComposition } from '@tiegel/elements';
import type { WeighedVerdict, WeighingError } from '@tiegel/insight';
import { criteria, quantities, quantityById } from '@tiegel/screening';
import { wrapped } from './inWords.ts';
import { unitOf } from './quantityColumn.ts';
import { lineWidth, table } from './table.ts';

interface Batch {
  composition: Composition;
  /** g */
  mass: number;
  /** g */
  resolution: number;
  prices: PriceList;
}

type Weighed = Omit<WeighingError, 'verdicts'> & { criteria: Record<string, WeighedVerdict> };

/** What a balance leaves certain, for reading: shares, quantities, then the limits and rules that it can turn. */
export function* weighingText(weighed: Weighed, batch: Batch): Generator<string> {
  const { composition, mass, resolution, prices } = batch;
  yield `${wrapped(`${spacedComposition(composition)} at.%, ${mass} g, every mass off by at most one step of ${resolution} g`)}\n\n`;
  yield `${shares(weighed, resolution).join('\n')}\n\n`;
  yield `${values(weighed, prices).join('\n')}\n\n`;
  for (const line of verdictLines(weighed, prices)) yield `${wrapped(line)}\n`;
  yield `${wrapped(weighed.trust)}\n`;
  if (prices.invented) yield `Prices of ${prices.date}, invented for demonstration.\n`;
}

function shares({ masses, shares }: Weighed, resolution: number): string[] {
  const decimals = decimalsOf(resolution);
  return table(
    [
      { head: '', align: 'left' },
      { head: 'mass', unit: 'g' },
      { head: 'target', unit: 'at.%' },
      { head: 'least', unit: 'at.%' },
      { head: 'greatest', unit: 'at.%' },
    ],
    Object.entries(masses).map(([symbol, grams]) => {
      const { value, least, greatest } = shares[symbol]!;
      return [symbol, grams.toFixed(decimals), ...[value, least, greatest].map((share) => share.toFixed(3))];
    }),
  );
}

/** Quantities with one decimal more than elsewhere: the interval is often narrower than what is usually shown. */
function values(weighed: Weighed, prices: PriceList, called: 'name' | 'symbol' = 'name'): string[] {
  const found = quantities.filter(({ id }) => typeof weighed.quantities[id]?.value === 'number');
  const rows = found.map(({ id, decimals, [called]: label }) => {
    const { value, least, greatest, mayLack } = weighed.quantities[id]!;
    const shown = [value, least, greatest].map((one) =>
      one === null ? null : fixedDecimals(one, decimals + 1),
    );
    return [mayLack ? `${label} *` : label, unitOf(quantityById(id), prices), ...shown];
  });
  const lines = table(
    [
      { head: 'quantity', align: 'left' },
      { head: 'unit', align: 'left' },
      ...['value', 'least', 'greatest'].map((head) => ({ head })),
    ],
    rows,
  );
  const note = rows.some(([label]) => label?.endsWith('*')) ? ['* some outcome has no value'] : [];
  const fits = Math.max(...lines.map((line) => line.length)) <= lineWidth;
  return fits || called === 'symbol' ? [...lines, ...note] : values(weighed, prices, 'symbol');
}

function* verdictLines({ limits, criteria: verdicts }: Weighed, prices: PriceList): Generator<string> {
  const lookup = (id: string) => ({ ...quantityById(id), unit: unitOf(quantityById(id), prices) });
  for (const { limit, passes, canFlip } of limits) {
    const now = passes === null ? 'has no value' : passes ? 'is kept' : 'is not kept';
    yield `Limit ${limitInWords(limit, lookup)}: ${now}${canFlip ? '; weighing alone can turn it' : ', however it is weighed'}.`;
  }
  const turned = criteria.filter(({ id }) => verdicts[id]?.canFlip).map(({ name }) => name);
  yield turned.length === 0
    ? 'Weighing alone can turn no rule.'
    : `Weighing alone can turn: ${turned.join('; ')}. A heavier batch or a finer balance settles it.`;
}
