import { type Affine, always, combine, isFinitePair, LARGE, setFlat, settle, sometimes } from './affine.ts';
import type { Curve } from './curves.ts';

/** exp, ln and powers are not promised to round correctly; some units in the last place are far more than they do. */
const lower = (value: number) => value - Math.abs(value) * 2 ** -48;
const higher = (value: number) => value + Math.abs(value) * 2 ** -48;

/** Between the chord and a tangent in the middle. */
export function curvedBound(affine: Affine, to: number, of: number, curve: Curve): () => void {
  const { low, high, missing, below, above } = affine;
  return () => {
    if (missing[of] === always || !(high[of]! >= curve.from)) return setFlat(affine, to, 0, 0, always);
    const lacks = low[of]! < curve.from ? sometimes : missing[of]!;
    const [from, until] = [Math.max(low[of]!, curve.from), high[of]!];
    const [first, last] = [curve.value(from), curve.value(until)];
    let [least, greatest] = first <= last ? [first, last] : [last, first];
    if (curve.turns !== null && from < curve.turns && until > curve.turns) {
      const turn = curve.value(curve.turns);
      least = Math.min(least, turn);
      greatest = Math.max(greatest, turn);
    }
    const pole =
      curve.turns === null && from < 0 && until >= 0 && !Number.isFinite(curve.value(0)) && curve.from < 0;
    if (pole) return setFlat(affine, to, -Infinity, Infinity, lacks);
    if (!curve.exact) {
      least = Number.isFinite(least) ? lower(least) : least;
      greatest = Number.isFinite(greatest) ? higher(greatest) : greatest;
      if (first >= 0 && last >= 0) least = Math.max(0, least);
    }
    const bends = curve.bends(from, until);
    if (
      bends === 0 ||
      !(until > from) ||
      !isFinitePair(first, last) ||
      !isFinitePair(last, first) ||
      !(until - from < LARGE)
    ) {
      return setFlat(affine, to, least, greatest, lacks);
    }
    const chord = (last - first) / (until - from);
    const chordSize = Math.abs(first) + Math.abs(last) + Math.abs(chord) * (Math.abs(from) + Math.abs(until));
    // Of the two functions that bound the variable, the one that the tangent will use.
    const middle = (below.atMiddle[of]! + above.atMiddle[of]!) / 2;
    const touch = middle > from && middle < until ? middle : (from + until) / 2;
    const height = curve.value(touch);
    const slope = curve.slope(touch);
    const tangentSize = Math.abs(height) + Math.abs(slope * touch);
    combine(
      affine,
      bends !== 1,
      to,
      first - chord * from + (bends === 1 ? 1 : -1) * chordSize * 2 ** -46,
      chord,
      of,
      0,
      of,
    );
    combine(
      affine,
      bends === 1,
      to,
      height - slope * touch - (bends === 1 ? 1 : -1) * tangentSize * 2 ** -46,
      slope,
      of,
      0,
      of,
    );
    settle(affine, to, least, greatest, lacks);
  };
}
