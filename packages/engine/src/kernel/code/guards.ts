import type { Code, Local } from '../emit.ts';
import { Unprovable } from '../unprovable.ts';

/** Something further than `guard` (units) from 0 is certain; `size` is the greatest that it can be. */
interface Guarded {
  distance: Local;
  guard: number;
  unit: Local | null;
  size: number;
  mayBeNaN: boolean;
}

/** What the values and tests of a scope leave uncertain. */
export interface Guards {
  /** @throws Unprovable where nothing is known of how far a value may be off */
  watch(one: Guarded): void;
  /** Takes the mask of what inner code was not sure of. */
  add(unsure: Local): void;
  /** Puts the mask of all that is uncertain so far on the stack; false where there is none. */
  pushUncertain(): boolean;
}

/** Distances are multiplied and compared at once in groups of so many: more would leave too many points uncertain. */
const MOST_IN_A_PRODUCT = 4;
/** A guard wider than this share of the size is compared by itself. */
const NARROW = 1e-9;

const isNarrow = ({ guard, unit, size, mayBeNaN }: Guarded): boolean =>
  !mayBeNaN && unit === null && guard <= NARROW * size;

export function guardsIn(code: Code): Guards {
  const guarded: Guarded[] = [];
  const unsures: Local[] = [];

  /** Where one distance lies within its guard, the product lies within that times the sizes of the others. */
  function pushProductMask(group: readonly Guarded[]): void {
    for (const [at, { distance }] of group.entries()) {
      code.get(distance);
      if (at > 0) code.op('f64x2.mul');
    }
    const sizes = group.reduce((product, { size }) => product * size, 1);
    const widest = Math.max(...group.map(({ guard, size }) => guard / size));
    code.op('f64x2.abs').splat(1.000001 * widest * sizes);
    // No product is infinite or NaN, unless the sizes leave that open.
    if (sizes < 1e300) code.op('f64x2.le');
    else code.op('f64x2.gt', 'v128.not');
  }

  function pushMask({ distance, guard, unit, mayBeNaN }: Guarded): void {
    code.get(distance).op('f64x2.abs').splat(guard);
    if (unit !== null) code.get(unit).op('f64x2.mul');
    // What is NaN is certain; elsewhere nothing is, should the value be NaN all the same.
    if (mayBeNaN) code.op('f64x2.le');
    else code.op('f64x2.gt', 'v128.not');
  }

  return {
    watch(one) {
      if (!(one.guard < Number.MAX_VALUE)) throw new Unprovable();
      guarded.push(one);
    },
    add: (unsure) => void unsures.push(unsure),
    pushUncertain() {
      const narrow = guarded.filter(isNarrow);
      const masks: (() => void)[] = [];
      for (let at = 0; at < narrow.length; at += MOST_IN_A_PRODUCT) {
        masks.push(() => pushProductMask(narrow.slice(at, at + MOST_IN_A_PRODUCT)));
      }
      for (const one of guarded) if (!isNarrow(one)) masks.push(() => pushMask(one));
      for (const unsure of unsures) masks.push(() => code.get(unsure));
      for (const [at, push] of masks.entries()) {
        push();
        if (at > 0) code.op('v128.or');
      }
      return masks.length > 0;
    },
  };
}
