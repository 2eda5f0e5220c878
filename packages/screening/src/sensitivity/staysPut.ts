import type { Step } from '../binding/program.ts';
import { isBinary, isUnary } from '../formula/nodeKinds.ts';

/**
 * Whether a step keeps its value whatever the shares of the elements present: a mean of equal
 * values, a spread of equal values, what is made of such. Its rate is 0 even where a rule of
 * differentiation has none: the root of a spread that is 0 and stays 0.
 *
 * @param members indices into the program's symbols of the elements present
 * @param stays whether each earlier step does
 */
export function staysPut(step: Step, members: readonly number[], stays: readonly boolean[]): boolean {
  if (isBinary(step)) return stays[step.left]! && stays[step.right]!;
  if (isUnary(step)) return stays[step.of]!;
  switch (step.kind) {
    case 'constant':
    case 'least':
    case 'greatest':
    case 'leastPair':
    case 'greatestPair':
      return true;
    case 'entropy':
      return false;
    case 'linear':
      return members.every((member) => step.coefficients[member] === step.coefficients[members[0]!]);
    case 'pairs': {
      const size = Math.sqrt(step.coefficients.length);
      return members.every((row) => members.every((column) => step.coefficients[row * size + column] === 0));
    }
    case 'power':
      return stays[step.of]!;
    case 'choose': {
      const { left, right, then, otherwise } = step;
      return [left, right, then, ...(otherwise === null ? [] : [otherwise])].every((one) => stays[one]);
    }
  }
}
