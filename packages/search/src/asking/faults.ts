import type { Plan } from '@tiegel/contract';
import { type Fault, fault, inDigits, type Lookup, printedUnit } from '@tiegel/contract/terms';
import { columns, pairColumns, priceColumn } from '@tiegel/elements';
import { type Prepared, unreachableLimits } from '@tiegel/engine';
import { missingFor, quantityFinder } from '@tiegel/screening';
import { ownOf } from '../namedIn.ts';
import { printedEnds } from './printedEnds.ts';

/** Every value that a limit or a ranking needs and that the data lack for an element of the pool. */
export function valueFaults(plan: Plan): Fault[] {
  const { specification, facts } = plan;
  const { limits, rank, front = [] } = specification;
  const quantityOf = quantityFinder(ownOf(plan));
  const wholePool = Object.fromEntries(facts.symbols.map((symbol) => [symbol, 1]));
  const entries = [
    ...limits.map(({ quantity }, place) => ({ quantity, pointer: `/limits/${place}/quantity` })),
    ...rank.map(({ quantity }, place) => ({ quantity, pointer: `/rank/${place}/quantity` })),
    ...front.map(({ quantity }, place) => ({ quantity, pointer: `/front/${place}/quantity` })),
  ];
  return entries.flatMap(({ quantity, pointer }) => {
    const asked = quantityOf(quantity);
    const missing = missingFor(asked, wholePool, facts);
    return [...new Set(missing.map(({ value }) => value))].map((value) => {
      const elements = missing.filter((one) => one.value === value).map(({ element }) => element);
      return valueFault(asked.name, value, elements, pointer);
    });
  });
}

function valueFault(quantity: string, value: string, lacking: string[], pointer: string): Fault {
  const elements = listed(lacking);
  if (value === priceColumn.id) return fault('search/price-missing', { quantity, elements }, pointer);
  const name = [...columns, ...pairColumns].find(({ id }) => id === value)?.name.toLowerCase() ?? value;
  return fault('search/value-missing', { quantity, value: name, elements }, pointer);
}

function listed(words: readonly string[]): string {
  return words.length === 1 ? words[0]! : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** A grid without a point, or with too many. */
export function gridFaults(points: bigint, most: number): Fault[] {
  if (points === 0n) return [fault('search/no-points', {}, '/fractions')];
  if (points <= BigInt(most)) return [];
  return [fault('search/too-many-points', { points: inDigits(points), most: inDigits(most) })];
}

/** Limits that no point of the grid can meet, proven by bounds. */
export function unreachableFaults(prepared: Prepared, named: Lookup): Fault[] {
  const { limits } = prepared.plan.specification;
  const quantityOf = quantityFinder(ownOf(prepared.plan));
  return unreachableLimits(prepared).map(({ index, low, high }) => {
    const limit = limits[index]!;
    const { name, unit } = named(limit.quantity);
    const ends = printedEnds({ low, high }, limit, quantityOf(limit.quantity).decimals);
    const withUnit = (value: string) => (unit === '' ? value : `${value} ${printedUnit(unit)}`);
    const values = { quantity: name.toLowerCase(), low: withUnit(ends.low), high: withUnit(ends.high) };
    return fault('search/limit-unreachable', values, `/limits/${index}`);
  });
}
