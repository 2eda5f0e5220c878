import type { FormulaNode } from './formulaNode.ts';

const LONGEST = 40;

/** A part of a formula as it was written, for messages. */
export function partText(text: string, { at }: FormulaNode): string {
  const part = text.slice(...at);
  return part.length > LONGEST ? `${part.slice(0, LONGEST - 1)}…` : part;
}
