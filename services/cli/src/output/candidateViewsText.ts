import type { Candidate, ElementUse, SearchDistributions, SearchView, TradeOff } from '@tiegel/contract';
import { inDigits } from '@tiegel/contract/terms';
import { spacedComposition } from '@tiegel/elements';
import { shareError } from '@tiegel/search';
import { wrapped } from './inWords.ts';
import { quantityColumn, shownValue } from './quantityColumn.ts';
import { lineWidth, table } from './table.ts';

const noneMeets = 'No kept candidate meets all of this: leave something out.\n';
const meetingOf = ({ meeting, among }: Pick<ElementUse, 'meeting' | 'among'>) =>
  `${inDigits(meeting)} of ${inDigits(among.kept)} kept candidates`;

/** How often each element is in kept candidates, and in which amounts, for reading. */
export function* elementUseText(view: SearchView, use: ElementUse): Generator<string> {
  yield `${wrapped(view.question)}\n\n`;
  if (use.meeting === 0) return yield noneMeets;
  yield `In ${meetingOf(use)}; amounts in at.%, behind each in how many.\n\n`;
  const width = Math.max(...use.elements.map(({ candidates }) => inDigits(candidates).length));
  for (const { symbol, candidates, amounts } of use.elements) {
    const share = percent(candidates, use.meeting).padStart(9);
    const start = `${symbol.padEnd(4)}${inDigits(candidates).padStart(width)}${share}  `;
    const each = amounts.map(
      (one) => `${Number(one.atomicPercent.toFixed(3))}\u00a0(${inDigits(one.candidates)})`,
    );
    const lines = wrapped(each.join(', '), lineWidth - start.length).split('\n');
    yield `${`${start}${lines.join(`\n${' '.repeat(start.length)}`)}`.replaceAll('\u00a0', ' ').trimEnd()}\n`;
  }
}

/** Bins of a distribution that make one line for reading. */
const binsInLine = 5;

/** Distributions for reading: what is a sample says so, with its size and error. */
export function* distributionsText(view: SearchView, found: SearchDistributions): Generator<string> {
  yield `${wrapped(view.question)}\n\n`;
  yield `${wrapped(sampleInWords(view, found))}\n`;
  for (const { quantity, edges, grid, passing, kept } of found.quantities) {
    const ofPassing = passing === null ? 0 : totalOf(passing);
    const bins = Array.from({ length: Math.ceil((edges.length - 1) / binsInLine) }, (_, at) => {
      const [from, to] = [at * binsInLine, Math.min((at + 1) * binsInLine, edges.length - 1)];
      const inside = ({ counts }: typeof kept) => counts.slice(from, to).reduce((sum, one) => sum + one, 0);
      return { from: plain(edges[from]!), to: plain(edges[to]!), inside };
    });
    const beside = (['below', 'above', 'missing'] as const)
      .map((place) => ({ from: '', to: place as string, inside: (spread: typeof kept) => spread[place] }))
      .filter(({ inside }) => [grid, passing, kept].some((one) => one !== null && inside(one) > 0));
    const { head, unit } = quantityColumn(quantity, view.prices, view.moreQuantities);
    const lines = table(
      [
        { head: 'from', ...(unit === undefined ? {} : { unit }) },
        { head: 'to' },
        { head: 'grid', unit: '%' },
        { head: 'passing', unit: '%' },
        { head: 'kept' },
      ],
      [...bins, ...beside].map(({ from, to, inside }) => [
        ...[from, to],
        grid && share(inside(grid), found.sample),
        passing && ofPassing > 0 ? share(inside(passing), ofPassing) : null,
        inDigits(inside(kept)),
      ]),
    );
    yield `\n${quantity} ${head}\n${lines.join('\n')}\n`;
    if (grid === null) yield 'Worked out for kept candidates only.\n';
    else if (!found.exact && ofPassing > 0)
      yield `${wrapped(`Passing: ${inDigits(ofPassing)} of the sample; a share of them is known to ± ${points(ofPassing)} percentage points or better.`)}\n`;
  }
  yield `\nKept: ${meetingOf(found)}. Every bin with --json.\n`;
}

function sampleInWords(
  { counts }: SearchView,
  { exact, sample, passed, error }: SearchDistributions,
): string {
  const met = `${(100 * passed).toFixed(2)} %`;
  if (exact) return `All ${inDigits(sample)} points of the grid; ${met} of them meet every limit.`;
  return (
    `A sample: ${inDigits(sample)} of the ${inDigits(counts.points)} points of the grid, drawn at random. ` +
    `${met} ± ${(100 * error).toFixed(2)} % of the points meet every limit; ` +
    `a share of the grid is known to ± ${points(sample)} percentage points or better (95 %).`
  );
}

/** The front of two quantities for reading, from the best of the first to the best of the second. */
export function* frontText(
  view: SearchView,
  front: TradeOff,
  candidateAt: (rank: number) => Candidate,
): Generator<string> {
  const { quantities, prefer, items } = front;
  yield `${wrapped(view.question)}\n\n`;
  if (items.length === 0) return yield noneMeets;
  const wishes = quantities.map((id, place) => `${id} ${prefer[place]}`).join(', ');
  yield `${wrapped(`${inDigits(items.length)} best compromises (${wishes}) among ${meetingOf(front)}: the front of what was kept, not of all that passed.`)}\n\n`;
  yield `${table(
    [
      { head: 'rank' },
      { head: 'composition', unit: 'at.%', align: 'left' },
      ...quantities.map((id) => quantityColumn(id, view.prices, view.moreQuantities)),
      { head: 'alike' },
    ],
    items.map(({ rank, values, alike }) => [
      String(rank),
      spacedComposition(candidateAt(rank).composition),
      ...quantities.map((id, place) => shownValue(id, values[place], view.moreQuantities)),
      inDigits(alike),
    ]),
  ).join('\n')}\n`;
}

/** Half-width of the 95 % interval of a share of so many, at its widest, in percentage points. */
const points = (sample: number): string => (100 * shareError(0.5, sample)).toFixed(1);
const percent = (count: number, whole: number): string => `${((100 * count) / whole).toFixed(1)} %`;
const share = (count: number, whole: number): string => ((100 * count) / whole).toFixed(1);

function totalOf({
  counts,
  below,
  above,
  missing,
}: SearchDistributions['quantities'][number]['kept']): number {
  return counts.reduce((sum, one) => sum + one, below + above + missing);
}

/** Four digits that mean something, never as a power of ten. */
function plain(value: number): string {
  return Math.abs(value) >= 1000 ? value.toFixed(0) : String(Number(value.toPrecision(4)));
}
