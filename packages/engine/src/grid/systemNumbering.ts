import type { Grid } from './grid.ts';

/**
 * Element systems by number. A system is an ascending list of places in the pool; its size lies
 * within the grid's components and it holds every required element. Systems are numbered from 0
 * in the order of their symbol lists, a list before its extensions: Al, Al-Co, Al-Co-Cr, Al-Cr.
 * Systems without a grid point are numbered, too.
 */
export interface SystemNumbering {
  /** How many systems there are; exact, far below 2^53 for any pool of elements. */
  count: number;
  /** The system of a number from 0 to count − 1; throws RangeError otherwise. */
  systemAt(number: number): number[];
  /** How many systems begin with a list of `chosen` elements and continue it, or not, with elements from `place` of the pool on. */
  continuations(place: number, chosen: number): number;
  /** Whether a list of `chosen` elements, all before `place`, is a system when nothing from `place` on is added. */
  isSystem(place: number, chosen: number): boolean;
  /** The number of a system. */
  numberOf(system: readonly number[]): number;
  /** Turns a system into the one that follows, in place; false after the last. */
  advance(system: number[]): boolean;
}

/**
 * The numbering of a grid's systems. Preparing takes (elements × components) steps; numbering and
 * finding take one step for each element of the pool.
 */
export function systemNumbering(grid: Pick<Grid, 'symbols' | 'required' | 'components'>): SystemNumbering {
  const { required, components } = grid;
  const elements = grid.symbols.length;
  const lastRequired = required.lastIndexOf(true);
  const table = continuationCounts(required, components);
  const continuations = (place: number, chosen: number): number => table[place]?.[chosen] ?? 0;
  const isSystem = (place: number, chosen: number): boolean =>
    chosen >= components.min && chosen <= components.max && lastRequired < place;

  function systemAt(number: number): number[] {
    if (!(number >= 0 && number < continuations(0, 0))) throw new RangeError(`There is no system ${number}.`);
    const system: number[] = [];
    let rest = number;
    let place = 0;
    for (;;) {
      if (isSystem(place, system.length)) {
        if (rest === 0) return system;
        rest -= 1;
      }
      for (let within = continuations(place + 1, system.length + 1); rest >= within; ) {
        rest -= within;
        place += 1;
        within = continuations(place + 1, system.length + 1);
      }
      system.push(place);
      place += 1;
    }
  }

  function numberOf(system: readonly number[]): number {
    let number = 0;
    let place = 0;
    for (const [chosen, element] of system.entries()) {
      if (isSystem(place, chosen)) number += 1;
      for (; place < element; place += 1) number += continuations(place + 1, chosen + 1);
      place += 1;
    }
    return number;
  }

  /** Appends the first element from `place` on with which a system can be completed. */
  function extend(system: number[], place: number): boolean {
    for (let element = place; element < elements; element += 1) {
      if (continuations(element + 1, system.length + 1) > 0) {
        system.push(element);
        return true;
      }
      if (required[element]) return false;
    }
    return false;
  }

  function advance(system: number[]): boolean {
    let place = system.length === 0 ? 0 : system[system.length - 1]! + 1;
    for (;;) {
      if (extend(system, place)) {
        place = system[system.length - 1]! + 1;
        if (isSystem(place, system.length)) return true;
        continue;
      }
      do {
        const dropped = system.pop();
        if (dropped === undefined) return false;
        place = required[dropped] ? elements : dropped + 1;
      } while (place >= elements);
    }
  }

  return { count: continuations(0, 0), continuations, isSystem, systemAt, numberOf, advance };
}

function continuationCounts(required: readonly boolean[], components: Grid['components']): number[][] {
  const sizes = components.max + 1;
  const last = Array.from({ length: sizes + 1 }, (_, chosen) =>
    chosen >= components.min && chosen <= components.max ? 1 : 0,
  );
  const table: number[][] = [last];
  for (let place = required.length - 1; place >= 0; place -= 1) {
    const after = table[0]!;
    const without = required[place] ? 0 : 1;
    table.unshift(after.map((count, chosen) => without * count + (after[chosen + 1] ?? 0)));
  }
  return table;
}
