import { problem } from '@tiegel/contract/terms';
import { type FormulaNode, partsOf } from './formulaNode.ts';
import { type Expectation, SyntaxError as ParserError, parse } from './formulaParser.js';

/** Bounds of what is read: a figure of merit is a line, and reading must never take long. */
const MOST_CHARACTERS = 1000;
const MOST_NODES = 200;
const DEEPEST = 32;

/**
 * Reads a formula in the usual notation: + − × ÷ as + - * /, ^ for powers, brackets, functions, names
 * and decimal numbers. Nothing is evaluated and no name is looked up.
 * @param pointer JSON pointer of the text, for its faults
 * @throws ProblemError expression/length, expression/syntax, expression/too-complex
 */
export function readFormula(text: string, pointer: string): FormulaNode {
  if (text.length > MOST_CHARACTERS) {
    throw problem('expression/length', { length: text.length, limit: MOST_CHARACTERS }, pointer);
  }
  const formula = parsed(text, pointer);
  refuseAbove(MOST_NODES, countNodes(formula), 'parts', pointer);
  refuseAbove(DEEPEST, depthOf(formula), 'levels', pointer);
  return formula;
}

function parsed(text: string, pointer: string): FormulaNode {
  try {
    return parse(text);
  } catch (error) {
    if (!(error instanceof ParserError)) throw error;
    const { location, expected, found } = error;
    throw problem(
      'expression/syntax',
      {
        place: location.start.offset + 1,
        found: found === null ? 'it ends' : `"${found}" stands`,
        expected: expectedInWords(expected),
      },
      pointer,
    );
  }
}

function refuseAbove(limit: number, size: number, of: string, pointer: string): void {
  if (size > limit) throw problem('expression/too-complex', { size, limit, of }, pointer);
}

function countNodes(node: FormulaNode): number {
  return partsOf(node).reduce((sum, part) => sum + countNodes(part), 1);
}

function depthOf(node: FormulaNode): number {
  return 1 + Math.max(0, ...partsOf(node).map(depthOf));
}

/** 'a name, a number or "("', without the spaces that may stand anywhere. */
function expectedInWords(expected: readonly Expectation[]): string {
  const words = [...new Set(expected.flatMap(wordFor))].sort();
  return words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

function wordFor(one: Expectation): string[] {
  if (one.type === 'literal') return [`"${one.text}"`];
  if (one.type === 'class') return one.parts.map((character) => `"${character}"`);
  if (one.type === 'end') return ['the end'];
  return one.type === 'other' && one.description !== 'space' ? [one.description] : [];
}
