import type { Node, Nodes } from '../node.ts';
import type { Roughen } from '../roughened.ts';
import type { Operator } from './operator.ts';
import type { Test } from './test.ts';

/**
 * What the rules of one program work with. A rule rewrites a comparison of a node as one of what the node
 * is made of, and has that compared in turn; it is null where it does not fit.
 */
export interface Comparer {
  nodes: Nodes;
  roughen: Roughen;
  /** Parts that make the whole. */
  total: number;
  /** The most elements of a system. */
  elements: number;
  /** Where the node's canonical value stands to a number within threshold ± width. */
  compare(node: Node, operator: Operator, threshold: number, width: number): Test;
}

/** How a value is to stand to some number within threshold ± width. */
export interface Relation {
  operator: Operator;
  threshold: number;
  width: number;
}
