import { GAS_CONSTANT_J_PER_MOL_K } from '@tiegel/screening';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';

/** Eigenvalues nearer to zero than this share of the largest are rounding. */
const ROUNDING = 1e-12;

/** The change of composition to which a random solution first becomes unstable on cooling. */
export interface FirstMode {
  /** K */
  temperature: number;
  /** dc of each element, of unit length, Σ dc = 0, the entry of largest size positive */
  direction: number[];
}

/**
 * The highest temperature at which the free energy of a random solution,
 * G(c) = Σᵢ<ⱼ Aᵢⱼ cᵢcⱼ + RT Σ c ln c, stops curving upwards in every direction of composition, and
 * the direction in which it does; null where it never stops.
 *
 * The Hessian A + T D, D = diag(R/c), restricted to Σ dc = 0, is singular there: −PAP v = T PDP v.
 * With v = √c w (component by component) and u = √c this is the plain symmetric problem of
 * M = −√c A √c / R on the space orthogonal to u, solved in n − 1 dimensions, so that the trivial
 * zero of u never competes. For a system so regular that two directions become unstable at once,
 * one of them is returned.
 *
 * @param fractions mole fractions, all above 0
 * @param energies A, J/mol, symmetric
 * @source textbook spinodal of a regular solution (from memory)
 */
export function firstMode(
  fractions: readonly number[],
  energies: readonly (readonly number[])[],
): FirstMode | null {
  const size = fractions.length;
  if (size < 2) return null;
  const roots = fractions.map(Math.sqrt);
  const scaled = energies.map((row, i) =>
    row.map((energy, j) => (-roots[i]! * roots[j]! * energy) / GAS_CONSTANT_J_PER_MOL_K),
  );
  const basis = orthogonalTo(roots);
  const projected = basis.transpose().mmul(new Matrix(scaled)).mmul(basis);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(projected, {
    assumeSymmetric: true,
  });
  const temperature = Math.max(...realEigenvalues);
  const scale = Math.max(...realEigenvalues.map(Math.abs));
  if (!(temperature > scale * ROUNDING)) return null;
  const vector = basis.mmul(eigenvectorMatrix.getColumnVector(realEigenvalues.indexOf(temperature)));
  return { temperature, direction: unit(vector.to1DArray().map((entry, i) => entry * roots[i]!)) };
}

/** An orthonormal basis, as columns, of what is orthogonal to a unit vector of positive entries: a Householder reflection but for its first column. */
function orthogonalTo(vector: readonly number[]): Matrix {
  const size = vector.length;
  const normal = vector.map((entry, i) => (i === 0 ? entry + 1 : entry));
  const square = normal.reduce((sum, entry) => sum + entry * entry, 0);
  const columns = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size - 1 }, (_, k) => {
      const reflected = (2 * normal[i]! * normal[k + 1]!) / square;
      return (i === k + 1 ? 1 : 0) - reflected;
    }),
  );
  return new Matrix(columns);
}

function unit(vector: readonly number[]): number[] {
  const length = Math.hypot(...vector);
  const largest = vector.reduce((a, b) => (Math.abs(b) > Math.abs(a) * (1 + ROUNDING) ? b : a));
  return vector.map((entry) => entry / (largest < 0 ? -length : length));
}
