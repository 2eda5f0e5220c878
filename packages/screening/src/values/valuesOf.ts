import type { Facts } from '@tiegel/contract';
import { factsFor, parseAlloy } from '@tiegel/elements';
import { bind } from '../binding/bind.ts';
import { coefficientsOf } from '../binding/coefficients.ts';
import type { Quantity } from '../definition/quantity.ts';
import { quantities } from '../quantities/index.ts';
import { quantityOf } from '../registry/quantityById.ts';
import { evaluator } from './evaluator.ts';
import { preparedOnce } from './preparedOnce.ts';

/** Amounts of elements by symbol, in at.% (or of any other total); 0 means absent. */
export type Composition = Readonly<Record<string, number>>;

/** Values by the id of the quantity; null where there is none. */
export type QuantityValues = Record<string, number | null>;

/**
 * Prepares quantities for many compositions of the same elements: what is returned takes a
 * composition and gives its values, in the units of the quantities.
 *
 * @param of which quantities, by id or, if they are one's own, themselves; all of the registry by
 *   default
 * @param conditions by name, in the units of conditions.ts; what is not given takes its default
 * @throws ProblemError quantity/unknown
 */
export function screening(
  facts: Facts,
  of: readonly (string | Quantity)[] = quantities,
  conditions: Readonly<Record<string, number>> = {},
): (composition: Composition) => QuantityValues {
  const chosen = of.map(quantityOf);
  const formulas = chosen.map(({ formula }) => formula);
  const { evaluate } = evaluator(bind(formulas, facts, conditions));
  const results = new Float64Array(chosen.length);
  return (composition) => {
    const { members, amounts, total } = amountsOf(composition, facts);
    evaluate(members, amounts, total, results);
    return Object.fromEntries(chosen.map(({ id }, k) => [id, finiteOrNull(results[k]!)]));
  };
}

const allIds = quantities.map(({ id }) => id);

/** Registry quantities by their ids: one's own may share an id with another of its kind. */
const screeningById = preparedOnce((ids: readonly string[]) => ids.join(), screening);

/**
 * The quantities of one composition, by id; see `screening` for the parameters. Formulas are bound
 * once for the same facts, so that handing in the same again is quick.
 */
export function valuesOf(
  composition: Composition,
  facts: Facts,
  of: readonly (string | Quantity)[] = allIds,
  conditions: Readonly<Record<string, number>> = {},
): QuantityValues {
  const ids = of.filter((one) => typeof one === 'string');
  const valuesAt =
    ids.length === of.length ? screeningById(facts, ids, conditions) : screening(facts, of, conditions);
  return valuesAt(composition);
}

/**
 * One quantity of one alloy, a composition or a text such as 'AlCoCrFeNi', in the quantity's
 * unit; null where it has no value. Without facts, those of the elements package without prices.
 * @throws ProblemError quantity/unknown, and for a text what parseAlloy throws
 */
export function valueFor(id: string, alloy: Composition | string, facts?: Facts): number | null {
  const composition = typeof alloy === 'string' ? parseAlloy(alloy) : alloy;
  return valuesOf(composition, facts ?? factsFor(Object.keys(composition)), [id])[id]!;
}

/** What an evaluator takes, of a composition as people write it. */
export interface Amounts {
  members: number[];
  amounts: Float64Array;
  total: number;
}

/**
 * The elements present, in the order of the facts. Amounts that are short decimals become whole
 * numbers, so that a typed composition has exactly the sums of the same point of a grid.
 * @throws RangeError for an element that the facts lack, for an amount below 0 or not a number,
 *   and where nothing is present
 */
export function amountsOf(composition: Composition, facts: Facts): Amounts {
  const present: [member: number, amount: number][] = [];
  for (const [symbol, amount] of Object.entries(composition)) {
    const member = facts.symbols.indexOf(symbol);
    if (member < 0) throw new RangeError(`The facts hold no element ${symbol}.`);
    if (!(amount >= 0 && amount < Number.POSITIVE_INFINITY))
      throw new RangeError(`${symbol}: ${amount} is no amount.`);
    if (amount > 0) present.push([member, amount]);
  }
  if (present.length === 0) throw new RangeError('A composition needs at least one element.');
  present.sort(([a], [b]) => a - b);
  const given = coefficientsOf(Float64Array.from(present, ([, amount]) => amount));
  const amounts = given.decimal?.whole ?? given.values;
  return {
    members: present.map(([member]) => member),
    amounts,
    total: amounts.reduce((sum, one) => sum + one),
  };
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
