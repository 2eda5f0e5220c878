import { bare, factorOf, fixedValue, type Node } from '../node.ts';
import { ROUNDED, sizeOf } from '../slack.ts';
import { nodeAtom } from './atom.ts';
import type { Comparer, Relation } from './comparer.ts';
import { mirrored, type Operator } from './operator.ts';
import { ratioOfExponentials } from './ratioOfExponentials.ts';
import { rootAgainst } from './rootAgainst.ts';
import { all, any, type Test } from './test.ts';

/** A guard of at most this share of the size leaves hardly a point uncertain. */
const FINE = 1e-9;

/** a/b against g is a − g b against 0, by the sign of b; x/0 is infinite with the sign of x, as a − g b says too. */
export function throughQuotient(
  comparer: Comparer,
  quotient: Node,
  above: Node,
  below: Node,
  relation: Relation,
): Test | null {
  const { nodes, compare } = comparer;
  const { operator, threshold, width } = relation;
  const wider = width + ROUNDED * (Math.abs(threshold) + width);
  const numerator = fixedValue(above);
  if (numerator !== null && numerator > 0 && below.low >= 0 && threshold - wider > 0) {
    const least = numerator / threshold;
    const relative = wider / (threshold - wider) + ROUNDED;
    return compare(below, mirrored[operator], least, 1.01 * relative * least);
  }
  const rounded = { operator, threshold, width: wider };
  const special =
    ratioOfExponentials(comparer, above, below, rounded) ??
    quotientOfQuotient(comparer, above, below, rounded);
  if (special) return special;
  const direct = nodeAtom(quotient, relation);
  if (below.low >= 0) {
    return better(rootAgainst(comparer, above, below, rounded) ?? product(operator), direct);
  }
  if (below.high < 0) return better(product(mirrored[operator]), direct);
  if (below.mayLack || above.mayLack) return null;
  return any(
    all(compare(below, '>=', 0, 0), product(operator)),
    all(compare(below, '<', 0, 0), product(mirrored[operator])),
  );

  function product(side: Operator): Test {
    const inverse = 1 / factorOf(above);
    const factor = Number.isFinite(threshold * inverse) ? inverse : 1;
    const moved = nodes.binary(
      'subtract',
      factor === 1 ? above : nodes.binary('multiply', nodes.constant(factor), above),
      nodes.binary('multiply', nodes.constant(threshold * factor), below),
    );
    return compare(moved, side, 0, wider * sizeOf(below) * factor * 1.01);
  }
}

/** a/(b/c) against g is a c/b against g: without a division, and often one form. */
function quotientOfQuotient(
  { nodes, compare }: Comparer,
  above: Node,
  below: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  const { operation } = below;
  if (operation.kind !== 'divide' || below.mayLack || above.mayLack) return null;
  const [numerator, divisor] = [operation.left, bare(operation.right)];
  if (!(below.low > 0 && numerator.low > 0 && divisor.low > 0)) return null;
  const product = nodes.binary('multiply', above, divisor);
  if (product.form === null || numerator.form === null) return null;
  const moved = nodes.binary(
    'subtract',
    product,
    nodes.binary('multiply', nodes.constant(threshold), numerator),
  );
  const wider = width + 2 * ROUNDED * (Math.abs(threshold) + width);
  return compare(moved, operator, 0, 1.01 * wider * sizeOf(numerator));
}

/** The one of two tests that leaves fewer points uncertain, the first where it is fine. */
function better(first: Test, second: Test): Test {
  const isFine = (test: Test): boolean =>
    'tests' in test ? test.tests.every(isFine) : test.kind !== 'atom' || test.guard <= FINE * test.size;
  return isFine(first) || !isFine(second) ? first : second;
}
