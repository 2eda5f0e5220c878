import type { Chunk } from '@tiegel/contract';
import type { Prepared } from '../prepared/prepare.ts';
import type { PrunedSearch } from './prunedSearch.ts';

/** A system whose points are not all decided. */
export interface OpenSystem {
  number: number;
  bestKey: number;
}

/** The systems by the best key that bounds of the whole system allow, best first, and how many points they all have. */
export function openSystems(
  { systems, ranking }: Prepared,
  { firstSystem, endSystem, firstPoint, endPoint }: Chunk,
  { tests, boxOf, counting, options, kept }: PrunedSearch,
): { open: OpenSystem[]; points: number } | null {
  const open: OpenSystem[] = [];
  const isIdle = (bestKey: number, number: number) =>
    !counting && ranking.keepPerSystem === 0 && kept.excludes(bestKey, number, 0);
  const system = systems.systemAt(firstSystem);
  let points = 0;

  /** Bounds the system at hand. */
  function take(number: number): void {
    const whole = boxOf(system);
    if (whole.box === null) return;
    points += (endPoint ?? whole.points) - firstPoint;
    tests.enter(system, whole.box.total);
    tests.bound(whole.box);
    const bestKey = tests.bestKey();
    if (!isIdle(bestKey, number)) open.push({ number, bestKey });
  }

  for (let number = firstSystem; number < endSystem; number += 1, systems.advance(system)) {
    if ((number & 255) === 0 && options.stopped?.()) return null;
    take(number);
  }
  open.sort((one, other) =>
    one.bestKey === other.bestKey ? one.number - other.number : one.bestKey < other.bestKey ? -1 : 1,
  );
  return { open, points };
}
