import { nameInSentence } from '../nameInSentence.ts';
import { effectivePool } from '../specification/effectivePool.ts';
import type {
  FrontEntry,
  GridFractions,
  Limit,
  RankEntry,
  SearchSpecification,
} from '../specification/specification.ts';

/** How a quantity is called; `unit` is '' for a plain number. */
export interface Named {
  name: string;
  unit: string;
}

/** Gives name and unit of a quantity by its id. */
export type Lookup = (quantity: string) => Named;

/** A condition and its value, in its unit; null: none. */
export interface ConditionValue {
  label: string;
  unit: string;
  value: number | null;
}

const numberWords = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** What the question says of a tally that is not the usual one. */
const tallyInWords = { all: 'passes counted of all limits together', none: 'passes not counted' };

/**
 * What a search asks, in one line of plain words: 'five or six of Al Cr Cu Fe Mn Mo Ni Ti V, with
 * Cr Fe Ni, 5–35 at.% in steps of 5, density ≤ 8 g/cm³, lowest size mismatch'. Elements that
 * are not in the effective pool do not occur.
 *
 * @param conditions those that belong in the question, with the value that they have
 */
export function questionOf(
  specification: SearchSpecification,
  lookup: Lookup,
  conditions: readonly ConditionValue[] = [],
): string {
  const { elements, components, fractions, limits, rank, tally } = specification;
  const pool = effectivePool(elements);
  const phrases = [`${countInWords(components)} of ${pool.join(' ')}`];
  if (elements.require.length > 0) phrases.push(`with ${[...elements.require].sort().join(' ')}`);
  phrases.push(fractions === 'equimolar' ? 'in equal shares' : gridInWords(fractions, pool));
  phrases.push(...limits.map((limit) => limitInWords(limit, lookup)));
  phrases.push(rankInWords(rank, lookup));
  if (specification.front) phrases.push(frontInWords(specification.front, lookup));
  if (tally !== 'each') phrases.push(tallyInWords[tally]);
  const kept = (specification.keptOnly ?? []).map((limit) => limitInWords(limit, lookup));
  if (kept.length > 0) phrases.push(`of those kept only ${kept.join(', ')}`);
  phrases.push(...conditions.map(conditionInWords));
  return phrases.join(', ');
}

/** A condition as a question states it: 'service temperature 1073.15 K', 'no grain size'. */
export function conditionInWords({ label, unit, value }: ConditionValue): string {
  const name = label.toLowerCase();
  return value === null ? `no ${name}` : `${name} ${shown(value)} ${unit}`;
}

function countInWords({ min, max }: SearchSpecification['components']): string {
  const [least, most] = [numberWords[min] ?? String(min), numberWords[max] ?? String(max)];
  if (min === max) return least;
  return max === min + 1 ? `${least} or ${most}` : `${least} to ${most}`;
}

function gridInWords({ step, min, max, each }: GridFractions, pool: readonly string[]): string {
  const own = pool.flatMap((symbol) => {
    const bounds = each[symbol];
    return bounds ? [boundsInWords(symbol, bounds, '')] : [];
  });
  const all = `${shown(min)}–${shown(max)} at.% in steps of ${shown(step)}`;
  return own.length > 0 ? `${all} (${own.join(', ')})` : all;
}

/** A limit as a question states it: 'density ≤ 8 g/cm³', 'mixing enthalpy −15 to 5 kJ/mol'. */
export function limitInWords({ quantity, min, max }: Limit, lookup: Lookup): string {
  const { unit } = lookup(quantity);
  const bounds = { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
  return boundsInWords(inSentence(quantity, lookup), bounds, unit);
}

function boundsInWords(what: string, { min, max }: { min?: number; max?: number }, unit: string): string {
  const withUnit = unit === '' ? '' : ` ${printedUnit(unit)}`;
  if (min === undefined) return `${what} ≤ ${shown(max!)}${withUnit}`;
  if (max === undefined) return `${what} ≥ ${shown(min)}${withUnit}`;
  return `${what} ${shown(min)} to ${shown(max)}${withUnit}`;
}

function rankInWords(rank: readonly RankEntry[], lookup: Lookup): string {
  const [first] = rank;
  if (rank.length === 1 && first) {
    const name = inSentence(first.quantity, lookup);
    if (typeof first.prefer === 'string') return `${first.prefer}est ${name}`;
    return `${name} nearest to ${targetInWords(first.prefer.target, first.quantity, lookup)}`;
  }
  return `best balance of ${rank.map((entry) => wishInWords(entry, lookup)).join(', ')}`;
}

function wishInWords({ quantity, prefer }: RankEntry, lookup: Lookup): string {
  const name = inSentence(quantity, lookup);
  if (typeof prefer === 'string') return `${prefer} ${name}`;
  return `${name} near ${targetInWords(prefer.target, quantity, lookup)}`;
}

/** 'with the front of low density against high Ω': members are kept beside the ranking. */
function frontInWords(front: readonly FrontEntry[], lookup: Lookup): string {
  const wishes = front.map(({ quantity, prefer }) => `${prefer} ${inSentence(quantity, lookup)}`);
  return `with the Pareto front of ${wishes.join(' against ')}`;
}

function targetInWords(target: number, quantity: string, lookup: Lookup): string {
  const { unit } = lookup(quantity);
  return unit === '' ? shown(target) : `${shown(target)} ${printedUnit(unit)}`;
}

function inSentence(quantity: string, lookup: Lookup): string {
  return nameInSentence(quantity, lookup(quantity).name);
}

/** A number with the minus sign of print. */
function shown(value: number): string {
  return String(value).replace('-', '−');
}

/** A unit as people read it: g/cm³ for the g/cm3 of data, ∛du for du⅓, which would read as a third of it. */
export function printedUnit(unit: string): string {
  return unit
    .replace(/(\p{L}+)⅓/gu, '∛$1')
    .replace(/(?<=[a-z])2\b/g, '²')
    .replace(/(?<=[a-z])3\b/g, '³');
}
