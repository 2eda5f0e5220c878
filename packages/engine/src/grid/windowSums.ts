/**
 * Sums over a sliding window: result[s] = Σ values[s − x] for x from `lowest` to `highest`, that
 * is, in how many ways an amount within bounds completes what `values` counts. Cost: three passes.
 *
 * Only additions of terms inside the window (running sums from and to the borders of blocks as
 * wide as the window). A difference of running totals would be shorter, but totals beyond 2^53
 * round, and would spoil small counts; here every count below 2^53 is exact whatever its
 * neighbours are. With a `modulus` (at most 2^52, values below it) the sums are residues.
 */
export function windowSums(
  values: Float64Array,
  lowest: number,
  highest: number,
  modulus = Number.POSITIVE_INFINITY,
): Float64Array {
  const length = values.length;
  const result = new Float64Array(length);
  const width = Math.min(highest - lowest + 1, length);
  if (width <= 0) return result;
  const toBorder = new Float64Array(length);
  for (let border = 0; border < length; border += width) {
    let sum = 0;
    for (let at = Math.min(border + width, length) - 1; at >= border; at -= 1) {
      sum += values[at]!;
      if (sum >= modulus) sum -= modulus;
      toBorder[at] = sum;
    }
  }
  let fromBorder = 0;
  for (let last = 0; last + lowest < length; last += 1) {
    fromBorder = last % width === 0 ? values[last]! : fromBorder + values[last]!;
    if (fromBorder >= modulus) fromBorder -= modulus;
    const first = last - width + 1;
    let sum = fromBorder;
    if (first > 0 && first % width !== 0) sum += toBorder[first]!;
    result[last + lowest] = sum >= modulus ? sum - modulus : sum;
  }
  return result;
}
