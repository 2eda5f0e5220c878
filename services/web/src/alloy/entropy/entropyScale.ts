import type { Amounts } from '@tiegel/contract';
import { conventionalAlloys } from '@tiegel/elements';
import { valuesOf } from '@tiegel/screening';

/** An alloy on the scale of configurational entropy; `name` is null for the alloy of the page. */
export interface OnScale {
  name: string | null;
  designation: string;
  /** J/(mol K) */
  entropy: number;
  /** equal shares of how many elements have this entropy */
  effectiveElements: number;
}

/** The alloy beside alloys in daily use, lowest entropy first. */
export function entropyScale(composition: Amounts): OnScale[] {
  const others = conventionalAlloys.map(({ name, designation, composition: shares }) => ({
    name,
    designation,
    ...entropyOf(shares),
  }));
  return [{ name: null, designation: '', ...entropyOf(composition) }, ...others].sort(
    (a, b) => a.entropy - b.entropy,
  );
}

/** The entropy needs no data of elements, amounts alone. */
function entropyOf(composition: Readonly<Amounts>): Pick<OnScale, 'entropy' | 'effectiveElements'> {
  const facts = { symbols: Object.keys(composition).sort(), columns: {}, pairs: {} };
  const values = valuesOf(composition, facts, ['configurationalEntropy', 'effectiveElements']);
  return { entropy: values.configurationalEntropy!, effectiveElements: values.effectiveElements! };
}
