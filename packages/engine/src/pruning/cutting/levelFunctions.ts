/**
 * Affine functions over the levels of a box: a level for each element but the two of the line, along which one
 * amount rises as the other falls.
 */
export interface LevelFunctions {
  /** There is room for so many. */
  readonly mostElements: number;
  readonly mostFunctions: number;
  count: number;
  constants: Float64Array;
  /** By function and element. */
  slopes: Float64Array;
  /** By level and function: what the elements so far add. */
  sums: Float64Array;
  /** By level and function: what the elements from there on add at least is tailSlope · what is left + tailConstant. */
  tailSlopes: Float64Array;
  tailConstants: Float64Array;
  /** By function: slope along the line, 1 over it (0: none), and of the element that takes what is left. */
  inverse: Float64Array;
  ofLast: Float64Array;
}

/** Over a line slopes below this add up to far less than functions are eased by. */
const NO_SLOPE = 2 ** -1022;

/** None yet, with room for some. */
export function levelFunctions(mostElements: number, mostFunctions: number): LevelFunctions {
  const levels = mostElements + 1;
  return {
    ...{ mostElements, mostFunctions, count: 0 },
    constants: new Float64Array(mostFunctions),
    slopes: new Float64Array(mostFunctions * mostElements),
    sums: new Float64Array(mostFunctions * levels),
    tailSlopes: new Float64Array(mostFunctions * levels),
    tailConstants: new Float64Array(mostFunctions * levels),
    inverse: new Float64Array(mostFunctions),
    ofLast: new Float64Array(mostFunctions),
  };
}

/**
 * Readies the functions for a box.
 * @param order places of the elements, the two of the line last
 */
export function prepareLevels(
  of: LevelFunctions,
  order: Int32Array,
  low: readonly number[],
  high: readonly number[],
): void {
  const { mostElements, mostFunctions } = of;
  const elements = low.length;
  const [risen, fallen] = [order[elements - 2]!, order[elements - 1]!];
  for (let one = 0; one < of.count; one += 1) {
    const start = one * mostElements;
    of.sums[one] = of.constants[one]!;
    const along = of.slopes[start + risen]! - of.slopes[start + fallen]!;
    of.inverse[one] = Math.abs(along) >= NO_SLOPE ? 1 / along : 0;
    of.ofLast[one] = of.slopes[start + fallen]!;
    // Σ sᵢyᵢ = m Σ yᵢ + Σ (sᵢ − m) yᵢ ≥ m · rest + Σ min(0, sᵢ − m) · widthᵢ for any m.
    const m = (of.slopes[start + risen]! + of.slopes[start + fallen]!) / 2;
    let tail = 0;
    for (let level = elements - 1; level >= 0; level -= 1) {
      const element = order[level]!;
      tail += Math.min(0, of.slopes[start + element]! - m) * (high[element]! - low[element]!);
      of.tailSlopes[level * mostFunctions + one] = m;
      of.tailConstants[level * mostFunctions + one] = tail;
    }
  }
}
