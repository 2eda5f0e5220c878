/** Where a part of a formula stands in its text: first character and the one after the last, from 0. */
type Place = readonly [from: number, to: number];

/** A formula as it was written, before it means anything. */
export type FormulaNode = { at: Place } & (
  | { kind: 'number'; value: number }
  | { kind: 'name'; name: string }
  | { kind: 'call'; name: string; values: readonly FormulaNode[] }
  | { kind: 'negate'; of: FormulaNode }
  | { kind: 'operator'; operator: Operator; left: FormulaNode; right: FormulaNode }
);

export type Operator = '+' | '-' | '*' | '/' | '^';

/** The parts of a node, in the order of the text. */
export function partsOf(node: FormulaNode): readonly FormulaNode[] {
  switch (node.kind) {
    case 'number':
    case 'name':
      return [];
    case 'call':
      return node.values;
    case 'negate':
      return [node.of];
    case 'operator':
      return [node.left, node.right];
  }
}

/** The names of quantities in a formula, each once, in order of first use. */
export function namesIn(node: FormulaNode): string[] {
  const own = node.kind === 'name' ? [node.name] : [];
  return [...new Set([...own, ...partsOf(node).flatMap(namesIn)])];
}
