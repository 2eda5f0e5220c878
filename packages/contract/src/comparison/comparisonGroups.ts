import { likelyInWords } from '../alloy/likelyInWords.ts';
import { isSame, reportsInWords } from '../alloy/reportsInWords.ts';
import { verdictInWords } from '../evidence/verdictInWords.ts';
import type {
  ComparedAlloy,
  ComparedQuantity,
  Comparison,
  ComparisonGroup,
  ComparisonRow,
} from './comparison.ts';
import { differenceAmong } from './differenceAmong.ts';

type Numbered = Pick<Comparison<ComparedAlloy, ComparedQuantity>, 'alloys' | 'written'>;
type Rules<Alloy extends ComparedAlloy> = Pick<
  Comparison<Alloy, ComparedQuantity>,
  'alloys' | 'criteria' | 'written' | 'silence'
>;

/** What stands where an answer is still awaited. */
const waiting = '…';

/** Everything that is compared, in the order of reading; a group that says nothing is left out. */
export function comparisonGroups<Alloy extends ComparedAlloy, Quantity extends ComparedQuantity>(
  told: Comparison<Alloy, Quantity>,
): ComparisonGroup[] {
  return [
    { head: 'Composition, at.%', rows: shares(told) },
    ...(told.asked ?? []),
    { head: 'Phases', rows: phases(told) },
    { head: 'What competes', rows: competitors(told) },
    { head: 'Quantities', rows: quantityRows(told) },
    { head: 'Published rules for one phase, met or not', rows: rules(told, true) },
    { head: 'Published rules for anything else, met or not', rows: rules(told, false) },
  ].filter(({ rows }) => rows.length > 0);
}

function shares({ alloys, written }: Numbered): ComparisonRow[] {
  const symbols = [...new Set(alloys.flatMap(({ composition }) => Object.keys(composition)))].sort();
  return symbols.map((symbol) => {
    const values = alloys.map(({ composition }) => composition[symbol] ?? 0);
    const alike = values.every((value) => Math.abs(value - values[0]!) < 1e-6);
    return {
      ...{ id: `share-${symbol}`, name: symbol, symbol: '', unit: '', numeric: false },
      cells: values.map((value) => ({
        value,
        text: written(value === 0 ? null : value, Number.isInteger(Number(value.toFixed(6))) ? 0 : 2),
      })),
      difference: alike ? 'none' : 'unlike',
    };
  });
}

/** A line of words: alike or not. */
function words(id: string, name: string, texts: readonly string[]): ComparisonRow {
  return {
    ...{ id, name, symbol: '', unit: '', numeric: false },
    cells: texts.map((text) => ({ text, value: null })),
    difference: texts.includes(waiting) ? null : new Set(texts).size > 1 ? 'unlike' : 'none',
  };
}

interface NumberLine extends Pick<Numbered, 'written'> {
  decimals: number;
  scale: number;
  /** in the place of what stands for no number */
  none?: string;
}

/** A line of numbers on a scale of its own: `scale` is what counts as much. A value that is not known yet is undefined. */
function numbers(
  row: Pick<ComparisonRow, 'id' | 'name' | 'unit'>,
  values: readonly (number | null | undefined)[],
  { written, decimals, scale, none }: NumberLine,
): ComparisonRow {
  const text = (value: number | null | undefined) =>
    value === undefined ? waiting : value === null && none !== undefined ? none : written(value, decimals);
  return {
    ...row,
    ...{ symbol: '', numeric: true },
    cells: values.map((value) => ({ value: value ?? null, text: text(value) })),
    difference: values.includes(undefined)
      ? null
      : differenceAmong(
          values.map((value) => value ?? null),
          { low: 0, middle: scale / 2, high: scale },
        ),
  };
}

function phases({ alloys, written }: Numbered): ComparisonRow[] {
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
      ...{ written, decimals: 0, scale: 25 },
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

function competitors({ alloys, written }: Numbered): ComparisonRow[] {
  const told = alloys.map(({ explanation }) => explanation ?? undefined);
  return [
    numbers(
      { id: 'hull', name: 'Solution above its competitor, ± 10', unit: 'kJ/mol' },
      told.map((one) => one && (one.compounds?.hullDistance ?? null)),
      { written, decimals: 1, scale: 10 },
    ),
    numbers(
      { id: 'demixing', name: 'Demixes below', unit: 'K' },
      told.map((one) => one && (one.demixing?.temperature ?? null)),
      { written, decimals: 0, scale: 500, none: never },
    ),
    numbers(
      { id: 'ordering', name: 'Orders below', unit: 'K' },
      told.map((one) => one && (one.ordering?.temperature ?? null)),
      { written, decimals: 0, scale: 500, none: never },
    ),
  ];
}

function quantityRows<Alloy extends ComparedAlloy, Quantity extends ComparedQuantity>({
  alloys,
  quantities,
  typical,
  cellOf,
}: Comparison<Alloy, Quantity>): ComparisonRow[] {
  return quantities.map((quantity) => {
    const { id, name, symbol, unit } = quantity;
    const cells = alloys.map((alloy) => cellOf(quantity, alloy));
    return {
      ...{ id, name, symbol, unit, numeric: true, cells },
      difference: differenceAmong(
        cells.map(({ value }) => value),
        typical?.[id] ?? null,
      ),
    };
  });
}

/** What the rules say that claim one solution, or all the others, each of which names what it claims. */
function rules<Alloy extends ComparedAlloy>(
  { alloys, criteria, written, silence }: Rules<Alloy>,
  forOneSolution: boolean,
): ComparisonRow[] {
  const records = criteria.filter(({ predicts }) => (predicts === 'one solution') === forOneSolution);
  return records.map((record) => {
    const { id, name, positiveClass, balancedAccuracy } = record;
    const right = balancedAccuracy === null ? 'not tested' : `right: ${written(balancedAccuracy, 2)}`;
    return words(
      `rule-${id}`,
      `${forOneSolution ? name : `${name}: ${positiveClass}`} (${right})`,
      alloys.map((alloy) => {
        if (!alloy.explanation) return waiting;
        const verdict = alloy.explanation.criteria[id] ?? null;
        return verdict === null ? silence(id, alloy) : verdictInWords(record, verdict);
      }),
    );
  });
}
