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
    add(purpose, bounder, output, isBelow, constant, factor) {
      if (purpose === 'passSurely' || this.count === most) return;
      const into = slopes[this.count]!;
      const ofOutput = bounder.affine(output, isBelow, into, 0);
      const whole = constant + factor * ofOutput;
      if (!Number.isFinite(whole)) return;
      if (factor === -1) for (let at = 0; at < mostElements; at += 1) into[at] = -into[at]!;
      constants[this.count] = whole;
      sizes[this.count] = Math.abs(constant) + Math.abs(ofOutput);
      this.count += 1;
    },
  };
}
