import { type Fault, fault } from '../problem/problem.ts';
import { type ComponentsRequest, componentRange } from './components.ts';
import { type ElementsRequest, effectivePool } from './effectivePool.ts';
import type { FractionsRequest } from './fractions.ts';
import { partsOfBounds } from './partsOfBounds.ts';

/** The sections that were readable, each for itself; null where one was not. */
export interface Readable {
  elements: ElementsRequest | null;
  components: ComponentsRequest | null;
  fractions: FractionsRequest | null;
}

/** What is wrong between two sections that are each right. */
export function faultsBetween({ elements, components, fractions }: Readable): Fault[] {
  if (elements === null) return [];
  const pool = effectivePool(elements);
  return [
    ...(components === null ? [] : componentFaults(components, elements, pool.length)),
    ...(fractions === null ? [] : boundFaults(fractions, pool)),
  ];
}

function componentFaults(components: ComponentsRequest, elements: ElementsRequest, pool: number): Fault[] {
  const { min, max } = componentRange(components);
  const place = (key: 'min' | 'max') => `/components${typeof components === 'number' ? '' : `/${key}`}`;
  const required = elements.require?.length ?? 0;
  const faults: Fault[] = [];
  if (min > pool) faults.push(fault('specification/pool-too-small', { min, pool }, place('min')));
  if (required > max) {
    faults.push(fault('specification/too-many-required', { required, max }, place('max')));
  }
  return faults;
}

/** Bounds of single elements, completed by those of all; only elements of the pool count. */
function boundFaults(fractions: FractionsRequest, pool: readonly string[]): Fault[] {
  if (fractions === 'equimolar') return [];
  const { step, each = {} } = fractions;
  return pool.flatMap((symbol) => {
    const own = each[symbol];
    if (own === undefined) return [];
    const min = own.min ?? fractions.min ?? step;
    const max = own.max ?? fractions.max ?? 100;
    const pointer = `/fractions/each/${symbol}`;
    if (min > max) return [fault('specification/bounds-crossed', { what: symbol, min, max }, pointer)];
    if (partsOfBounds({ step, min, max })) return [];
    return [fault('specification/bounds-between-steps', { what: symbol, min, max, step }, pointer)];
  });
}
