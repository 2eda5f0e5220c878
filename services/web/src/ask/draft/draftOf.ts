import type { Limit, Preference, RankEntry, SearchSpecification } from '@tiegel/contract';
import { entryText } from '../../numbers/parseNumber.ts';
import {
  type Bounds,
  type Draft,
  emptyDraft,
  frontRow,
  letRow,
  limitRow,
  type Mark,
  type RankRow,
  rankRow,
} from './draft.ts';

/** A specification that the server has accepted; sections that may be left out may be missing. */
export type AcceptedSpecification = Partial<
  Omit<SearchSpecification, 'elements' | 'components' | 'fractions'>
> & {
  elements: { pool: string[]; require?: string[]; forbid?: string[] };
  components: number | { min: number; max: number };
  fractions:
    | 'equimolar'
    | { step: number; min?: number; max?: number; each?: Record<string, { min?: number; max?: number }> };
};

/** The form filled in from a specification. What it has no field for goes along as it is. */
export function draftOf(specification: AcceptedSpecification): Draft {
  const {
    version: _,
    name = '',
    elements,
    components,
    fractions,
    limits = [],
    rank = [],
    lets = {},
    keptOnly = [],
    conditions = {},
    tally = 'each',
    front = [],
    keep,
    keepPerSystem,
    ...others
  } = specification;
  const grid = fractions === 'equimolar' ? null : fractions;
  return {
    name,
    marks: marksOf(elements),
    components: boundsOf(typeof components === 'number' ? { min: components, max: components } : components),
    amounts: grid ? 'grid' : 'equimolar',
    step: grid?.step ?? emptyDraft.step,
    bounds: grid ? boundsOf(grid) : emptyDraft.bounds,
    each: Object.fromEntries(
      Object.entries(grid?.each ?? {}).map(([symbol, own]) => [symbol, boundsOf(own)]),
    ),
    limits: limits.map((limit: Limit) => limitRow(limit.quantity, boundsOf(limit))),
    rank: rank.map(rankRowOf),
    lets: Object.entries(lets).map(([own, text]) => letRow(own, text)),
    keptOnly: keptOnly.map((limit) => limitRow(limit.quantity, boundsOf(limit))),
    conditions: Object.fromEntries(Object.entries(conditions).map(([id, value]) => [id, entryText(value)])),
    tally,
    front: front.map(({ quantity, prefer }) => frontRow(quantity, { prefer })),
    keep: entryText(keep),
    keepPerSystem: entryText(keepPerSystem),
    others,
  };
}

function marksOf({
  pool,
  require = [],
  forbid = [],
}: AcceptedSpecification['elements']): Record<string, Mark> {
  const entries = (symbols: string[], mark: Mark) => symbols.map((symbol) => [symbol, mark] as const);
  return Object.fromEntries([
    ...entries(pool, 'pool'),
    ...entries(require, 'require'),
    ...entries(forbid, 'forbid'),
  ]);
}

function boundsOf({ min, max }: { min?: number; max?: number }): Bounds {
  return { min: entryText(min), max: entryText(max) };
}

function rankRowOf({ quantity, prefer, from, to, within, weight, shape }: RankEntry): RankRow {
  const anchors = {
    from: entryText(from),
    to: entryText(to),
    within: entryText(within),
    weight: entryText(weight),
    shape: entryText(shape),
  };
  return rankRow(quantity, { ...preferenceOf(prefer), ...anchors });
}

function preferenceOf(prefer: Preference): Partial<Pick<RankRow, 'prefer' | 'target'>> {
  return typeof prefer === 'string' ? { prefer } : { prefer: 'target', target: entryText(prefer.target) };
}
