import type { Distributions } from '@tiegel/contract';

/** Compositions drawn at random from the space of a search, and their values: what limits are tried on while they are typed. */
export interface Sample {
  /** compositions drawn */
  size: number;
  /** compositions of the whole space */
  points: number;
  /** the sample is the whole space: shares are exact */
  whole: boolean;
  /** by quantity, all in the order in which the compositions were drawn; null where there is no value */
  values: ReadonlyMap<string, readonly (number | null)[]>;
}

/** The answer of POST /distributions as the form uses it. */
export function sampleOf({ points, sample, quantities }: Distributions): Sample {
  return {
    size: sample,
    points,
    whole: sample >= points,
    values: new Map(quantities.map(({ quantity, values }) => [quantity, values])),
  };
}
