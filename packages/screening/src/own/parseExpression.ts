import { ProblemError, problem } from '@tiegel/contract/terms';
import type { Quantity } from '../definition/quantity.ts';
import type { Expression } from '../formula/expression.ts';
import type { PartUnit } from '../units/writtenUnit.ts';
import { namesIn } from './formulaNode.ts';
import { lookUpFaults } from './lookUpFaults.ts';
import { meaningOf } from './meaningOf.ts';
import { readFormula } from './readFormula.ts';

/** What a typed formula means. */
export interface ParsedExpression {
  expression: Expression;
  /** As printed; '' for a plain number, and where typed numbers leave it open. */
  unit: string;
  /** For formulas that name this one. */
  unitInFormulas: PartUnit;
  /** The ids of the quantities that it names, each once, in order of first use. */
  names: readonly string[];
}

/**
 * Reads a figure of merit of somebody's own: an expression over quantities in the usual notation,
 * as in `0.4*min(omega,10)/10 - density/8`. Operators + - * / ^ (the exponent a number), functions
 * min, max, abs, sqrt, exp, ln. It is read to a tree and never evaluated as code.
 *
 * Units: what is added, subtracted or compared by min and max must have the same unit, and exp and
 * ln want a plain number. A typed number may carry any unit, and so may whatever it multiplies or
 * divides: `density + meltingTemperature` is refused, `density/8 + meltingTemperature/2000` is not.
 *
 * @param known the quantities that it may name: those of the registry and one's own
 * @param pointer JSON pointer of the text, for its faults
 * @throws ProblemError expression/*, each fault with its place in the text
 */
export function parseExpression(text: string, known: readonly Quantity[], pointer = ''): ParsedExpression {
  const formula = readFormula(text, pointer);
  const quantities = new Map(known.map((quantity) => [quantity.id, quantity]));
  const faults = lookUpFaults(formula, text, [...quantities.keys()], pointer);
  if (faults.length > 0) throw new ProblemError(faults);
  const names = namesIn(formula);
  const { expression, unit } = meaningOf(formula, { text, quantities, pointer });
  if (names.length === 0) throw problem('expression/no-quantity', {}, pointer);
  return { expression, unit: unit === 'any' ? '' : unit.text, unitInFormulas: unit, names };
}
