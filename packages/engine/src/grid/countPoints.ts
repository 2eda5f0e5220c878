import { completionsBefore, lastCompletions } from './completions.ts';
import { countSystems } from './countSystems.ts';
import type { Grid } from './grid.ts';

/** Pairwise coprime; their product, about 2^156, exceeds every count (118 elements at 0.1 %: 2^119). */
const moduli = [2 ** 52, 2 ** 52 - 1, 2 ** 52 - 3];

/**
 * The number of grid points, exactly, without visiting one: a recursion over the elements of the
 * pool by (elements chosen, parts used). Cost: elements × components × steps.
 *
 * In plain numbers first. A result below 2^53 is exact, for only sums of counts that contribute
 * to it are rounded when they exceed 2^53, and then the result does. Above, the same recursion
 * gives residues, and the Chinese remainder theorem the count.
 */
export function countPoints(grid: Grid): bigint {
  if (grid.total === null) return BigInt(countSystems(grid));
  const plain = countModulo(grid, grid.total, Number.POSITIVE_INFINITY);
  if (plain < 2 ** 53) return BigInt(plain);
  const whole = grid.total;
  return fromResidues(moduli.map((modulus) => countModulo(grid, whole, modulus)));
}

function countModulo(grid: Grid, total: number, modulus: number): number {
  let layer = lastCompletions(grid, total);
  for (let place = grid.symbols.length - 1; place >= 0; place -= 1) {
    layer = completionsBefore(grid, place, layer, modulus);
  }
  return layer[0]![total]!;
}

/** The number below the product of the moduli that has these residues. */
function fromResidues(residues: readonly number[]): bigint {
  let value = 0n;
  let product = 1n;
  for (const [index, residue] of residues.entries()) {
    const modulus = BigInt(moduli[index]!);
    const gap = (((BigInt(residue) - value) % modulus) + modulus) % modulus;
    value += product * ((gap * inverse(product % modulus, modulus)) % modulus);
    product *= modulus;
  }
  return value;
}

/** The multiplicative inverse by Euclid's extended algorithm; value and modulus are coprime. */
function inverse(value: bigint, modulus: bigint): bigint {
  let [previous, current] = [modulus, value];
  let [before, factor] = [0n, 1n];
  while (current !== 0n) {
    const quotient = previous / current;
    [previous, current] = [current, previous - quotient * current];
    [before, factor] = [factor, before - quotient * factor];
  }
  return ((before % modulus) + modulus) % modulus;
}
