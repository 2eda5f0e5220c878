/** The part of a specification that says which compositions there are. */
export interface PlainGrid {
  elements: { pool: string[]; require?: string[]; forbid?: string[] };
  components: number | { min: number; max: number };
  fractions:
    | 'equimolar'
    | { step: number; min?: number; max?: number; each?: Record<string, { min?: number; max?: number }> };
}

/** One composition: mole fractions in the order of the symbols, which are alphabetical. */
export interface Point {
  symbols: readonly string[];
  fractions: readonly number[];
  score: number | null;
}

/** Every element set that the specification allows, with all its compositions (perhaps none). */
export function* enumerate(grid: PlainGrid): Generator<{ symbols: string[]; points: number[][] }> {
  const { pool, require = [], forbid = [] } = grid.elements;
  const symbols = [...new Set([...pool, ...require])].filter((symbol) => !forbid.includes(symbol)).sort();
  const { min, max } = typeof grid.components === 'number' ? both(grid.components) : grid.components;
  for (const chosen of subsets(symbols)) {
    if (chosen.length < min || chosen.length > max) continue;
    if (!require.every((symbol) => chosen.includes(symbol))) continue;
    yield { symbols: chosen, points: compositions(chosen, grid.fractions) };
  }
}

const both = (value: number) => ({ min: value, max: value });

/** All subsets, by counting in binary: a pool of some twenty elements is the most this is good for. */
function* subsets(symbols: readonly string[]): Generator<string[]> {
  for (let bits = 1; bits < 2 ** symbols.length; bits++) {
    yield symbols.filter((_, index) => (bits >> index) & 1);
  }
}

function compositions(symbols: readonly string[], fractions: PlainGrid['fractions']): number[][] {
  if (fractions === 'equimolar') return [symbols.map(() => 1 / symbols.length)];
  const { step, min = step, max = 100, each = {} } = fractions;
  const whole = Math.round(100 / step);
  const allowed = symbols.map((symbol) => {
    const least = each[symbol]?.min ?? min;
    const most = each[symbol]?.max ?? max;
    return range(1, whole).filter((parts) => parts * step >= least - 1e-9 && parts * step <= most + 1e-9);
  });
  const found: number[][] = [];
  const fill = (parts: number[], rest: number) => {
    const choices = allowed[parts.length]!;
    if (parts.length === symbols.length - 1) {
      if (choices.includes(rest)) found.push([...parts, rest].map((part) => part / whole));
      return;
    }
    for (const part of choices) {
      if (part < rest) fill([...parts, part], rest - part);
      else break;
    }
  };
  fill([], whole);
  return found;
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}
