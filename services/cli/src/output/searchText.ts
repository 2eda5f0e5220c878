import type { Candidate, SearchView } from '@tiegel/contract';
import { inDigits, warnsOfPrices } from '@tiegel/contract/terms';
import { type PriceList, spacedComposition } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import { boundsOf } from './boundsOf.ts';
import { wrapped } from './inWords.ts';
import { quantityColumn, shownValue } from './quantityColumn.ts';
import { lineWidth, table } from './table.ts';

const shownCandidates = 20;

/** The result of a search for reading: the question, how much each limit leaves, the best candidates. */
export function* searchText(view: SearchView, candidates: Iterable<Candidate>): Generator<string> {
  const { counts, kept, prices } = view;
  yield `${wrapped(view.question)}\n\n`;
  const systems = `${inDigits(counts.systems)} systems, ${inDigits(counts.points)} points`;
  yield `${systems}, ${counts.passed === null ? 'passes not counted (tally none)' : `${inDigits(counts.passed)} meet every limit`}\n`;
  yield* limitLines(view);
  const best = first(candidates, shownCandidates);
  if (best.length > 0) yield `\n${candidateTable(view, best, prices).join('\n')}\n`;
  yield `\n${inDigits(best.length)} of ${inDigits(kept)} kept; all of them with --json.\n`;
  yield `${secondsLine(view)}\n`;
  if (prices && warnsOfPrices(view, quantities))
    yield `Prices of ${prices.date}, invented for demonstration.\n`;
}

function* limitLines({ specification, counts }: SearchView): Generator<string> {
  const { passed, passedEach, outside } = counts;
  if (passed !== null && passedEach === null) {
    yield '  passes of each limit by itself not counted (tally all)\n';
  }
  for (const [index, limit] of specification.limits.entries()) {
    const passes = passedEach === null ? '' : `: ${inDigits(passedEach[index] ?? 0)} pass`;
    yield `  ${boundsOf(limit)}${passes}\n`;
  }
  for (const [quantity, points] of Object.entries(outside ?? {})) {
    yield `  ${quantity} has no value at ${inDigits(points)} points\n`;
  }
}

/** Candidates as lines, with as many columns as a line holds: first what is ranked, then what is limited. */
export function candidateTable(
  { specification, moreQuantities }: SearchView,
  best: readonly Candidate[],
  prices: Pick<PriceList, 'currency'> | null,
): string[] {
  const { rank, limits, keptOnly = [] } = specification;
  const asked = [...rank, ...limits, ...keptOnly].map(({ quantity }) => quantity);
  const score = specification.rank.length > 1 || typeof specification.rank[0]?.prefer === 'object';
  const fitting = (ids: readonly string[]): string[] => {
    const lines = table(
      [
        { head: '' },
        { head: 'composition', unit: 'at.%', align: 'left' },
        ...(score ? [{ head: 'score' }] : []),
        ...ids.map((id) => quantityColumn(id, prices, moreQuantities)),
      ],
      best.map((candidate) => [
        String(candidate.rank),
        spacedComposition(candidate.composition),
        ...(score ? [candidate.score?.toPrecision(4) ?? null] : []),
        ...ids.map((id) => shownValue(id, candidate.quantities[id], moreQuantities)),
      ]),
    );
    const fits = Math.max(...lines.map((line) => line.length)) <= lineWidth;
    return fits || ids.length === 0 ? lines : fitting(ids.slice(0, -1));
  };
  return fitting([...new Set(asked)]);
}

function secondsLine({ seconds, preparationSeconds, storingSeconds }: SearchView): string {
  const shown = (value: number | null) => (value === null ? '–' : value.toFixed(2));
  return `${shown(seconds)} s, ${shown(preparationSeconds)} s preparing and ${shown(storingSeconds)} s storing beside it`;
}

function first<Entry>(entries: Iterable<Entry>, count: number): Entry[] {
  const taken: Entry[] = [];
  for (const entry of entries) {
    taken.push(entry);
    if (taken.length === count) break;
  }
  return taken;
}
