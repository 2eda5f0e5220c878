import type { Limit } from '@tiegel/contract';
import type { Pick } from './pick.ts';

/** A limit or some, mostly such that some points meet it: anywhere, on a point's own value, or at the edge of what counts as on it. */
export function limitsOf(pick: Pick, quantity: string, values: readonly number[]): Limit[] {
  const edge = (share: number) => {
    const at = values[Math.floor(share * (values.length - 1))] ?? pick.between(-10, 10);
    const next = pick.one([0, 0, 1e-12, -1e-12, 1.000001e-12, -0.999999e-12, null]);
    return next === null ? Number(at.toPrecision(3)) : at + next * Math.max(1, Math.abs(at));
  };
  const sides = pick.one(['min', 'max', 'both', 'both', 'equal', 'twice', 'wide']);
  const [low, high] = [edge(pick.between(0, 0.4)), edge(pick.between(0.5, 1))];
  const range = { min: Math.min(low, high), max: Math.max(low, high) };
  if (sides === 'equal' && pick.chance(0.3)) return [{ quantity, min: low, max: low }];
  if (sides === 'twice') {
    return [
      { quantity, min: range.min },
      { quantity, max: range.max },
    ];
  }
  // Met wherever there is a value at all, or a finite one.
  if (sides === 'wide') return [{ quantity, ...pick.one([{ min: -1e300 }, { max: 1e300 }, { min: 0 }]) }];
  return [
    {
      quantity,
      ...(sides === 'max' ? {} : { min: range.min }),
      ...(sides === 'min' ? {} : { max: range.max }),
    },
  ];
}
