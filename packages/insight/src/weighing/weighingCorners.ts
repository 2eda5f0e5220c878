import { atomicToWeightPercent, weightToAtomicPercent } from '@tiegel/elements';
import type { Composition } from '@tiegel/screening';

/** More elements would make too many corners: 2 to the number of elements. */
export const mostWeighed = 12;

/** A batch as it is meant and as it can come out. */
export interface WeighedBatch {
  /** g, what each element should weigh */
  masses: Record<string, number>;
  /** at.%, at every combination of each mass being one step of the balance too small or too large */
  corners: Composition[];
}

/**
 * What a batch can come out as when every mass is off by at most one step of the balance: half a
 * step for rounding the mass to what the balance can show, half a step for its reading. A mass
 * below one step can come out as nothing.
 *
 * @param mass of the batch, g
 * @param resolution of the balance, g, below the mass of the batch
 * @throws RangeError for more than 12 elements, or a mass or resolution that is not possible
 */
export function weighingCorners(composition: Composition, mass: number, resolution: number): WeighedBatch {
  const present = Object.entries(composition).filter(([, amount]) => amount > 0);
  if (present.length > mostWeighed) throw new RangeError(`${present.length} elements have too many corners.`);
  if (!(resolution > 0 && mass > resolution && mass < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`A balance that shows ${resolution} g cannot weigh a batch of ${mass} g.`);
  }
  const weights = Object.entries(atomicToWeightPercent(Object.fromEntries(present)));
  const masses = weights.map(([symbol, percent]) => [symbol, (percent / 100) * mass] as const);
  const corners: Composition[] = [];
  for (let corner = 0; corner < 2 ** masses.length; corner++) {
    const weighed = masses
      .map(
        ([symbol, grams], at) => [symbol, grams + (corner & (1 << at) ? resolution : -resolution)] as const,
      )
      .filter(([, grams]) => grams > 0);
    if (weighed.length > 0) corners.push(weightToAtomicPercent(Object.fromEntries(weighed)));
  }
  return { masses: Object.fromEntries(masses), corners };
}
