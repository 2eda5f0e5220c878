import { type Condition, fixedValue, type Node } from '../node.ts';
import type { Comparer } from './comparer.ts';
import { mirrored, type Operator, opposite } from './operator.ts';
import { all, any, type Test } from './test.ts';

/** Whether a condition of the program holds. */
export function holds(comparer: Comparer, { left, operator, right }: Condition): Test {
  return against(comparer, left, operator, right);
}

/** Whether a condition is known not to hold; where a side is missing, neither this nor `holds` is true. */
export function failsToHold(comparer: Comparer, { left, operator, right }: Condition): Test {
  return against(comparer, left, opposite[operator], right);
}

/** A test of whichever node a condition chooses; false where it chooses none. */
export function choiceOf(
  comparer: Comparer,
  { when, then, otherwise }: { when: Condition; then: Node; otherwise: Node | null },
  test: (node: Node) => Test,
): Test {
  const chosen = all(holds(comparer, when), test(then));
  return otherwise === null ? chosen : any(chosen, all(failsToHold(comparer, when), test(otherwise)));
}

function against({ nodes, compare }: Comparer, left: Node, operator: Operator, right: Node): Test {
  const [first, second] = [fixedValue(left), fixedValue(right)];
  if (second !== null) return compare(left, operator, second, 0);
  if (first !== null) return compare(right, mirrored[operator], first, 0);
  return compare(nodes.binary('subtract', left, right), operator, 0, 0);
}
