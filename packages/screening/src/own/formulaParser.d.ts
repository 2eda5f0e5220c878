import type { FormulaNode } from './formulaNode.ts';

/** What the parser would have taken; `description` is the rule's name in the grammar. */
export type Expectation =
  | { type: 'literal'; text: string }
  | { type: 'other'; description: string }
  | { type: 'end' }
  /** one of these characters */
  | { type: 'class'; parts: readonly string[] };

/** Thrown where the text is no formula. */
declare class ParserError extends globalThis.SyntaxError {
  readonly expected: readonly Expectation[];
  readonly found: string | null;
  readonly location: { readonly start: { readonly offset: number } };
}

export { ParserError as SyntaxError };

/** Reads a text by formula.peggy. */
export declare function parse(text: string): FormulaNode;
