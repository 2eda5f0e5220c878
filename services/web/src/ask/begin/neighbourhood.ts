import { steps } from '@tiegel/contract/terms';
import { entryText } from '../../numbers/parseNumber.ts';
import type { Draft, Mark } from '../draft/draft.ts';

/** Alloys like a known one: its composition in at.%, by how much shares may differ, and elements that may come in. */
export interface Neighbourhood {
  composition: Readonly<Record<string, number>>;
  /** at.% */
  within: number;
  partners: readonly string[];
}

const mostElements = 10;

/**
 * The parts of the form that span a neighbourhood: pool, number of elements, grid and bounds. An
 * element whose share is above `within` must be there; one with less may be, from a step on; a
 * partner may come in with up to `within`. The grid has at least two steps between a share and its bound.
 */
export function neighbourhood({ composition, within, partners }: Neighbourhood): Partial<Draft> {
  const own = Object.keys(composition).sort();
  const guests = partners.filter((symbol) => !own.includes(symbol));
  const step = Math.max(steps[0]!, ...steps.filter((one) => one <= within / 2 && one <= 5));
  const required = own.filter((symbol) => composition[symbol]! - within >= step);
  const marks: Record<string, Mark> = Object.fromEntries([
    ...[...own, ...guests].map((symbol) => [symbol, 'pool'] as const),
    ...required.map((symbol) => [symbol, 'require'] as const),
  ]);
  const bounds = (least: number, most: number) => ({
    min: least > step ? entryText(rounded(least)) : '',
    max: entryText(rounded(Math.min(100, Math.max(step, most)))),
  });
  const most = Math.min(mostElements, own.length + guests.length);
  const fewest = Math.max(1, Math.min(most, required.length));
  return {
    marks,
    components: { min: String(fewest), max: String(most) },
    amounts: 'grid',
    step,
    bounds: { min: '', max: '' },
    each: Object.fromEntries([
      ...own.map(
        (symbol) => [symbol, bounds(composition[symbol]! - within, composition[symbol]! + within)] as const,
      ),
      ...guests.map((symbol) => [symbol, bounds(0, within)] as const),
    ]),
  };
}

/** Without the digits that taking shares of a whole leaves behind. */
function rounded(value: number): number {
  return Number(value.toFixed(4));
}
