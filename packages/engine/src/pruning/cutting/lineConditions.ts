import type { Sieve } from './sieve.ts';

/** Linear functions of the parts above a box's lower corner that must be at most 0 at points to be kept. */
export interface LineConditions extends Pick<Sieve, 'clear' | 'doubt' | 'keepNothing' | 'add'> {
  count: number;
  constants: Float64Array;
  /** The size of what each constant was added up from: what it is rounded by goes with that. */
  sizes: Float64Array;
  slopes: readonly Float64Array[];
}

/** Room for so many conditions; further ones are forgotten. */
export function lineConditions(most: number, mostElements: number): LineConditions {
  const constants = new Float64Array(most);
  const sizes = new Float64Array(most);
  const slopes = Array.from({ length: most }, () => new Float64Array(mostElements));
  return {
    ...{ count: 0, constants, sizes, slopes },
    clear() {
      this.count = 0;
    },
    doubt() {},
    keepNothing() {},
    add(purpose, bounder, output, side, value) {
      if (purpose === 'passSurely' || this.count === most) return;
      const constant = bounder.condition(output, side, value, slopes[this.count]!, 0);
      if (constant === Number.NEGATIVE_INFINITY) return;
      constants[this.count] = constant;
      sizes[this.count] = Math.abs(constant);
      this.count += 1;
    },
  };
}
