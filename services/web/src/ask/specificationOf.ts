import type { SearchSpecification } from '@tiegel/contract';
import { type ParsedNumber, parseNumber } from '../numbers/parseNumber.ts';
import { type Bounds, type Draft, marked, type RankRow } from './draft.ts';

/** A search as it is sent: what the server fills in itself may be missing, a text stands where no number could be read. */
export type RequestedSpecification = Partial<
  Omit<SearchSpecification, 'components' | 'fractions' | 'limits' | 'rank'>
> & {
  components: object;
  fractions: 'equimolar' | object;
  limits: object[];
  rank: object[];
};

/** The specification of a draft, and what each of its places is in the form. */
export interface Written {
  specification: RequestedSpecification;
  /** numbers that could not be read, by JSON pointer into the specification */
  unclear: Record<string, string>;
  /** for each limit of the specification, the index of its row in the form */
  limitRows: number[];
}

/**
 * Writes a draft as a search specification. Empty fields are left out (the server's defaults
 * hold), and so is a limit that has neither minimum nor maximum yet.
 */
export function specificationOf(draft: Draft): Written {
  const unclear: Record<string, string> = {};
  const number = (text: string, pointer: string, whole = false): number | undefined => {
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

  const limitRows: number[] = [];
  const limits = draft.limits.flatMap((row, index) => {
    if (row.min.trim() === '' && row.max.trim() === '') return [];
    limitRows.push(index);
    return [{ quantity: row.quantity, ...bounds(row, `/limits/${limitRows.length - 1}`) }];
  });
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
    limits,
    rank: draft.rank.map((row, index) =>
      rankEntry(row, draft.rank.length > 1, (text, key) => number(text, `/rank/${index}${key}`)),
    ),
    ...given({
      keep: number(draft.keep, '/keep', true),
      keepPerSystem: number(draft.keepPerSystem, '/keepPerSystem', true),
    }),
  };
  return { specification, unclear, limitRows };
}

function eachOf(draft: Draft, read: (fields: Bounds, pointer: string) => object): object {
  const entries = marked(draft, 'pool', 'require').flatMap((symbol) => {
    const own = draft.each[symbol] && read(draft.each[symbol], `/fractions/each/${symbol}`);
    return own && Object.keys(own).length > 0 ? [[symbol, own] as const] : [];
  });
  return entries.length === 0 ? {} : { each: Object.fromEntries(entries) };
}

/** One entry of the ranking; the anchors go with it exactly where several are combined. */
function rankEntry(
  row: RankRow,
  combined: boolean,
  number: (text: string, key: string) => number | undefined,
): object {
  const isTarget = row.prefer === 'target';
  const prefer = isTarget ? given({ target: number(row.target, '/prefer/target') }) : row.prefer;
  if (!combined) return { quantity: row.quantity, prefer };
  const anchors = isTarget
    ? { within: number(row.within, '/within') }
    : { from: number(row.from, '/from'), to: number(row.to, '/to') };
  return {
    quantity: row.quantity,
    prefer,
    ...given({ ...anchors, weight: number(row.weight, '/weight'), shape: number(row.shape, '/shape') }),
  };
}

/** The entries that have a value. */
function given<T extends Record<string, number | undefined>>(entries: T): { [K in keyof T]?: number } {
  return Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: number;
  };
}
