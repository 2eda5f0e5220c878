import type { SearchSpecification } from '@tiegel/contract';
import { type ParsedNumber, parseNumber } from '../../numbers/parseNumber.ts';
import { type Bounds, type Draft, type LimitRow, marked, type RankRow } from './draft.ts';

/** A search as it is sent: what the server fills in itself may be missing, a text stands where no number could be read. */
export type RequestedSpecification = Partial<
  Omit<SearchSpecification, 'components' | 'fractions' | 'limits' | 'rank' | 'lets' | 'keptOnly' | 'front'>
> & {
  components: object;
  fractions: 'equimolar' | object;
  limits: object[];
  rank: object[];
  lets?: Record<string, string>;
  keptOnly?: object[];
  front?: object[];
};

/** The specification of a draft, and what each of its places is in the form. */
export interface Written {
  specification: RequestedSpecification;
  /** numbers that could not be read, and names that will not do, by JSON pointer into the specification */
  unclear: Record<string, string>;
  /** for each limit of the specification, the index of its row in the form; for keptOnly the same */
  limitRows: number[];
  keptOnlyRows: number[];
  /** for each name of `lets`, the index of its row in the form */
  letRows: ReadonlyMap<string, number>;
}

type ReadNumber = (text: string, pointer: string, whole?: boolean) => number | undefined;

/**
 * Writes a draft as a search specification. Empty fields are left out (the server's defaults
 * hold), and so is a limit that has neither minimum nor maximum yet, and an expression without text.
 */
export function specificationOf(draft: Draft): Written {
  const unclear: Record<string, string> = {};
  const number: ReadNumber = (text, pointer, whole = false) => {
    const parsed: ParsedNumber = parseNumber(text, { whole });
    if ('value' in parsed) return parsed.value ?? undefined;
    unclear[pointer] = parsed.unclear;
    return undefined;
  };
  const bounds = (fields: Bounds, pointer: string, whole = false) =>
    given({
      min: number(fields.min, `${pointer}/min`, whole),
      max: number(fields.max, `${pointer}/max`, whole),
    });
  const limits = limitsOf(draft.limits, '/limits', bounds);
  const keptOnly = limitsOf(draft.keptOnly, '/keptOnly', bounds);
  const { lets, letRows } = letsOf(draft, unclear);
  const specification: RequestedSpecification = {
    version: 1,
    ...(draft.name.trim() === '' ? {} : { name: draft.name.trim() }),
    elements: {
      pool: marked(draft, 'pool', 'require'),
      require: marked(draft, 'require'),
      forbid: marked(draft, 'forbid'),
    },
    components: bounds(draft.components, '/components', true),
    fractions:
      draft.amounts === 'equimolar'
        ? 'equimolar'
        : { step: draft.step, ...bounds(draft.bounds, '/fractions'), ...eachOf(draft, bounds) },
    limits: limits.entries,
    rank: draft.rank.map((row, index) => rankEntry(row, draft.rank.length > 1, `/rank/${index}`, number)),
    ...filled({
      lets,
      keptOnly: keptOnly.entries,
      conditions: conditionsOf(draft, number),
      front: draft.front.map(({ quantity, prefer }) => ({ quantity, prefer })),
    }),
    ...(draft.tally === 'each' ? {} : { tally: draft.tally }),
    ...given({
      keep: number(draft.keep, '/keep', true),
      keepPerSystem: number(draft.keepPerSystem, '/keepPerSystem', true),
    }),
    ...draft.others,
  };
  return { specification, unclear, limitRows: limits.rows, keptOnlyRows: keptOnly.rows, letRows };
}

/** Rows of limits that say something, and the index of each in the form. */
function limitsOf(
  rows: readonly LimitRow[],
  pointer: string,
  bounds: (fields: Bounds, pointer: string) => object,
): { entries: object[]; rows: number[] } {
  const used = rows.flatMap((row, index) => (row.min.trim() || row.max.trim() ? [index] : []));
  const entries = used.map((index, place) => {
    const row = rows[index]!;
    return { quantity: row.quantity, ...bounds(row, `${pointer}/${place}`) };
  });
  return { entries, rows: used };
}

/** Expressions by name; a name that two have is unclear, for only one of them could be sent. */
function letsOf({ lets }: Draft, unclear: Record<string, string>) {
  const entries: Record<string, string> = {};
  const letRows = new Map<string, number>();
  for (const [index, { name: typed, text }] of lets.entries()) {
    const name = typed.trim();
    if (name === '' && text.trim() === '') continue;
    if (name === '')
      unclear[`/lets/${index}/name`] = 'Give the expression a name, such as stiffnessByDensity.';
    else if (letRows.has(name)) unclear[`/lets/${index}/name`] = `Another expression is called ${name}, too.`;
    else if (text.trim() === '')
      unclear[`/lets/${index}`] = 'Write the expression, such as youngsModulus / density.';
    else {
      letRows.set(name, index);
      Object.defineProperty(entries, name, { value: text, enumerable: true });
    }
  }
  return { lets: entries, letRows };
}

function conditionsOf({ conditions }: Draft, number: ReadNumber): Record<string, number> {
  const entries = Object.entries(conditions).map(([name, text]) => [
    name,
    number(text, `/conditions/${name}`),
  ]);
  return given(Object.fromEntries(entries)) as Record<string, number>;
}

function eachOf(draft: Draft, read: (fields: Bounds, pointer: string) => object): object {
  const entries = marked(draft, 'pool', 'require').flatMap((symbol) => {
    const own = draft.each[symbol] && read(draft.each[symbol], `/fractions/each/${symbol}`);
    return own && Object.keys(own).length > 0 ? [[symbol, own] as const] : [];
  });
  return entries.length === 0 ? {} : { each: Object.fromEntries(entries) };
}

/** One entry of the ranking; the anchors go with it exactly where several are combined. */
function rankEntry(row: RankRow, combined: boolean, pointer: string, number: ReadNumber): object {
  const entry = { quantity: row.quantity, prefer: preferenceOf(row, pointer, number) };
  if (!combined) return entry;
  const anchor = (key: 'from' | 'to' | 'within' | 'weight' | 'shape') =>
    number(row[key], `${pointer}/${key}`);
  const anchors =
    row.prefer === 'target' ? { within: anchor('within') } : { from: anchor('from'), to: anchor('to') };
  return { ...entry, ...given({ ...anchors, weight: anchor('weight'), shape: anchor('shape') }) };
}

function preferenceOf(
  { prefer, target }: Pick<RankRow, 'prefer' | 'target'>,
  pointer: string,
  number: ReadNumber,
): 'high' | 'low' | object {
  return prefer === 'target' ? given({ target: number(target, `${pointer}/prefer/target`) }) : prefer;
}

/** The sections that hold something. */
function filled<T extends Record<string, object>>(sections: T): Partial<T> {
  const used = Object.entries(sections).filter(([, section]) => Object.keys(section).length > 0);
  return Object.fromEntries(used) as Partial<T>;
}

/** The entries that have a value. */
function given<T extends Record<string, number | undefined>>(entries: T): { [K in keyof T]?: number } {
  return Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: number;
  };
}
