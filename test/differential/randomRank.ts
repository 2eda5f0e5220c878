import type { RankEntry } from '@tiegel/contract';
import type { Pick } from './pick.ts';

/** What points are ranked by: the quantities named, each with values that it has on the grid, ascending. */
export function rankOf(
  pick: Pick,
  ranked: readonly string[],
  values: ReadonlyMap<string, readonly number[]>,
): RankEntry[] {
  const [first] = ranked as [string];
  if (ranked.length === 1) {
    const list = values.get(first)!;
    const within = list[Math.floor(list.length / 3)] ?? 1;
    // On a value of the grid, on a round number near one, or where no value lies.
    const target = pick.one([within, within, Number(within.toPrecision(2)), 0, -3 * within, 1e6, 1e17]);
    return [{ quantity: first, prefer: pick.one(['high', 'low', 'high', 'low', { target }] as const) }];
  }
  // A few in ten searches go to the ends of what weights and exponents may be.
  const far = pick.chance(0.2);
  const weights = far ? [1e-3, 1, 1000] : [0.3, 2, 3];
  const shapes = far ? [0.01, 30, 100] : [0.5, 2];
  return ranked.map((quantity): RankEntry => {
    const list = values.get(quantity)!;
    const shaped = {
      ...(pick.chance(0.4) ? { weight: pick.one(weights) } : {}),
      ...(pick.chance(0.4) ? { shape: pick.one(shapes) } : {}),
    };
    return { quantity, ...anchorsOf(pick, list), ...shaped };
  });
}

type Anchors = Omit<RankEntry, 'quantity' | 'weight' | 'shape'>;

/** Between which values a quantity becomes desirable: about all that it has, a part of them, or none. */
function anchorsOf(pick: Pick, list: readonly number[]): Anchors {
  const [low, high] = [list[0] ?? 0, list.at(-1) ?? 1];
  const reach = high > low ? high - low : Math.max(1, Math.abs(low));
  const share = pick.one([1, 1, 1, 0.3, 0.01, 30, 1e9]);
  if (pick.chance(0.25)) {
    const target = pick.one([low + reach / 3, list[Math.floor(list.length / 2)] ?? 1]);
    return { prefer: { target }, within: reach * 0.8 * share };
  }
  const from = pick.chance(0.1) ? high : low + reach * pick.between(-0.3, 0.3);
  return { prefer: pick.one(['high', 'low']), from, to: from + reach * share };
}
