import { silenceInWords, verdictInWords } from '../alloy/criteria/verdictInWords.ts';
import { isGroundless } from '../alloy/isGroundless.ts';
import { likelyInWords } from '../alloy/verdict/likelyInWords.ts';
import { isSame, reportsInWords } from '../alloy/verdict/publishedInWords.ts';
import { formatNumber, noValue } from '../numbers/formatNumber.ts';
import { unitText } from '../server/lookup.ts';
import type { CompareRow, RowGroup, Told } from './compareRow.ts';
import { differenceOf } from './differenceOf.ts';
import { expressionRows, limitRows } from './searchRows.ts';

/** What stands where the server has not answered yet. */
const waiting = '…';

/** Everything that is compared, in the order of reading. */
export function rowsOf(told: Told): RowGroup[] {
  return [
    { head: 'Composition, at.%', rows: shares(told) },
    { head: 'Limits of the search', rows: limitRows(told) },
    { head: 'Expressions of the search', rows: expressionRows(told) },
    { head: 'Phases', rows: phases(told) },
    { head: 'What competes', rows: competitors(told) },
    { head: 'Quantities', rows: quantityRows(told) },
    { head: 'Published rules for one phase, met or not', rows: rules(told, true) },
    { head: 'Published rules for anything else, met or not', rows: rules(told, false) },
  ].filter(({ rows }) => rows.length > 0);
}

function shares({ alloys }: Told): CompareRow[] {
  const symbols = [...new Set(alloys.flatMap(({ composition }) => Object.keys(composition)))].sort();
  return symbols.map((symbol) => {
    const values = alloys.map(({ composition }) => composition[symbol] ?? 0);
    const alike = values.every((value) => Math.abs(value - values[0]!) < 1e-6);
    return {
      ...{ id: `share-${symbol}`, name: symbol, symbol: '', unit: '', numeric: false },
      cells: values.map((value) => ({
        value,
        text: value === 0 ? noValue : formatNumber(value, Number.isInteger(Number(value.toFixed(6))) ? 0 : 2),
      })),
      difference: alike ? 'none' : 'unlike',
    };
  });
}

/** A line of words: alike or not. */
function words(id: string, name: string, texts: readonly string[]): CompareRow {
  return {
    ...{ id, name, symbol: '', unit: '', numeric: false },
    cells: texts.map((text) => ({ text, value: null })),
    difference: texts.includes(waiting) ? null : new Set(texts).size > 1 ? 'unlike' : 'none',
  };
}

/** A line of numbers on a scale of its own: `scale` is what counts as much. A value that is not known yet is undefined. */
function numbers(
  row: Pick<CompareRow, 'id' | 'name' | 'unit'>,
  values: readonly (number | null | undefined)[],
  { decimals, scale, none = noValue }: { decimals: number; scale: number; none?: string },
): CompareRow {
  const text = (value: number | null | undefined) =>
    value === undefined ? waiting : value === null ? none : formatNumber(value, decimals);
  return {
    ...row,
    ...{ symbol: '', numeric: true },
    cells: values.map((value) => ({ value: value ?? null, text: text(value) })),
    difference: values.includes(undefined)
      ? null
      : differenceOf(
          values.map((value) => value ?? null),
          { low: 0, middle: scale / 2, high: scale },
        ),
  };
}

function phases({ alloys }: Told): CompareRow[] {
  const told = alloys.map(({ explanation }) => explanation ?? undefined);
  const percent = told.map((one) => {
    const probability = one?.phase.singleSolution;
    return typeof probability === 'number' ? 100 * probability : probability;
  });
  return [
    words(
      'likely',
      'Likely',
      told.map((one) => (one ? likelyInWords(one.phase) : waiting)),
    ),
    numbers({ id: 'one-phase', name: 'One uniform phase', unit: '%' }, percent, {
      decimals: 0,
      scale: 25,
      none: 'no basis',
    }),
    words(
      'basis',
      'Basis of the estimate',
      told.map((one) => (one ? { ok: 'near enough', weak: 'thin', none: 'none' }[one.phase.basis] : waiting)),
    ),
    words(
      'published',
      'As published',
      told.map((one) => {
        if (!one) return waiting;
        const same = one.nearest.filter(isSame);
        const published = same.filter(({ own }) => !own).map(reportsInWords);
        const own = same.filter((known) => known.own).map((known) => `yours: ${reportsInWords(known)}`);
        return [...(published.length > 0 ? published : ['not in the table here']), ...own].join('; ');
      }),
    ),
  ];
}

const never = 'never, or no data';

function competitors({ alloys }: Told): CompareRow[] {
  const told = alloys.map(({ explanation }) => explanation ?? undefined);
  return [
    numbers(
      { id: 'hull', name: 'Solution above its competitor, ± 10', unit: 'kJ/mol' },
      told.map((one) => one && (one.compounds?.hullDistance ?? null)),
      { decimals: 1, scale: 10 },
    ),
    numbers(
      { id: 'demixing', name: 'Demixes below', unit: 'K' },
      told.map((one) => one && (one.demixing?.temperature ?? null)),
      { decimals: 0, scale: 500, none: never },
    ),
    numbers(
      { id: 'ordering', name: 'Orders below', unit: 'K' },
      told.map((one) => one && (one.ordering?.temperature ?? null)),
      { decimals: 0, scale: 500, none: never },
    ),
  ];
}

function quantityRows({ alloys, quantities, typical, currency }: Told): CompareRow[] {
  return quantities.map((quantity) => {
    const { id, name, symbol, unit, decimals } = quantity;
    const groundless = alloys.map(({ explanation }) => isGroundless(quantity, explanation));
    const values = alloys.map((alloy, place) => (groundless[place] ? null : (alloy.values[id] ?? null)));
    return {
      ...{ id, name, symbol, unit: unitText(unit, currency), numeric: true },
      cells: values.map((value, place) => ({
        value,
        text: groundless[place] ? 'no basis' : formatNumber(value, decimals),
      })),
      difference: differenceOf(values, typical?.[id] ?? null),
    };
  });
}

/** What the rules say that claim one solution, or all the others, each of which names what it claims. */
function rules({ alloys, evidence }: Told, forOneSolution: boolean): CompareRow[] {
  const records =
    evidence?.criteria.filter(({ predicts }) => (predicts === 'one solution') === forOneSolution) ?? [];
  return records.map((record) => {
    const { id, name, positiveClass, balancedAccuracy } = record;
    const right = balancedAccuracy === null ? 'not tested' : `right: ${formatNumber(balancedAccuracy, 2)}`;
    return words(
      `rule-${id}`,
      `${forOneSolution ? name : `${name}: ${positiveClass}`} (${right})`,
      alloys.map((alloy) => {
        if (!alloy.explanation) return waiting;
        const verdict = alloy.explanation.criteria[id] ?? null;
        return verdict === null ? silenceInWords(id, alloy) : verdictInWords(record, verdict);
      }),
    );
  });
}
