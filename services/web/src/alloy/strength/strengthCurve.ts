import type { Amounts, Facts } from '@tiegel/contract';
import { type Strength, strengthOf } from '@tiegel/screening';

/** A strength at a temperature (K). */
export interface StrengthPoint extends Strength {
  temperature: number;
}

export type Lattice = 'fcc' | 'bcc';

/** K: the axis of every strength curve, so that two alloys can be laid side by side. */
export const coldest = 77;
export const hottest = 1600;
const step = 20;

/** The yield strength (MPa) as one fcc and as one bcc solution, from the cold of liquid nitrogen to 1600 K. */
export function strengthCurve(
  composition: Amounts,
  facts: Facts,
  conditions: Record<string, number>,
): Record<Lattice, StrengthPoint[]> {
  const temperatures = [coldest];
  for (let at = 100; at <= hottest; at += step) temperatures.push(at);
  const records = temperatures.map((serviceTemperature) =>
    strengthOf(composition, facts, { ...conditions, serviceTemperature }),
  );
  const of = (lattice: Lattice) =>
    records.map(({ temperature, [lattice]: strength }) => ({ temperature, ...strength }));
  return { fcc: of('fcc'), bcc: of('bcc') };
}

/** Stretches of neighbours that are alike and have a value: where a value lacks the line has a gap. */
export function stretches<Kind>(
  points: readonly StrengthPoint[],
  kindOf: (point: StrengthPoint) => Kind,
): { kind: Kind; points: StrengthPoint[] }[] {
  const found: { kind: Kind; points: StrengthPoint[] }[] = [];
  let open = false;
  for (const point of points) {
    if (point.value === null) {
      open = false;
      continue;
    }
    const kind = kindOf(point);
    const last = found.at(-1);
    if (open && last && last.kind === kind) last.points.push(point);
    else {
      // A change of kind leaves no hole: the new stretch begins where the last one ended.
      const joint = open && last ? [last.points.at(-1)!] : [];
      found.push({ kind, points: [...joint, point] });
    }
    open = true;
  }
  return found;
}
