import type { Tally } from '@tiegel/contract';

/** What the form says of an element: it may be in an alloy, must be, must not be. */
export type Mark = 'pool' | 'require' | 'forbid';

/** Entry fields hold text as it was typed; it is read when the specification is made of it. */
export interface Bounds {
  min: string;
  max: string;
}

export interface LimitRow extends Bounds {
  /** tells rows apart while they come and go */
  key: string;
  quantity: string;
}

export interface RankRow {
  key: string;
  quantity: string;
  prefer: 'high' | 'low' | 'target';
  target: string;
  from: string;
  to: string;
  within: string;
  weight: string;
  shape: string;
}

/** A figure of merit of one's own: the name by which limits and ranking call it, and its formula as typed. */
export interface LetRow {
  key: string;
  name: string;
  text: string;
  /** by which limits and ranking call it: the name, but for one that is being changed and is another's for the moment */
  called: string;
}

/** One of the aims whose best compromises are kept as a front. */
export interface FrontRow {
  key: string;
  quantity: string;
  prefer: 'high' | 'low';
}

/** The form of a search as it stands while a person writes it. */
export interface Draft {
  name: string;
  marks: Record<string, Mark>;
  components: Bounds;
  amounts: 'grid' | 'equimolar';
  step: number;
  bounds: Bounds;
  each: Record<string, Bounds>;
  limits: LimitRow[];
  rank: RankRow[];
  lets: LetRow[];
  /** limits on what is worked out for kept candidates only */
  keptOnly: LimitRow[];
  /** as typed, by name; '' where the default holds */
  conditions: Record<string, string>;
  tally: Tally;
  front: FrontRow[];
  keep: string;
  keepPerSystem: string;
  /** parts of a specification that the form has no field for: they go through it as they are */
  others: Record<string, unknown>;
}

let keys = 0;

/** A key that no row of this page has, also not one kept from before a reload. */
function newKey(): string {
  keys += 1;
  return `${Date.now().toString(36)}-${keys}`;
}

export function limitRow(quantity: string, bounds: Partial<Bounds> = {}): LimitRow {
  return { key: newKey(), quantity, min: '', max: '', ...bounds };
}

export function rankRow(quantity: string, entry: Partial<RankRow> = {}): RankRow {
  const blank = { target: '', from: '', to: '', within: '', weight: '', shape: '' };
  return { key: newKey(), quantity, prefer: 'low', ...blank, ...entry };
}

export function letRow(name: string, text = ''): LetRow {
  return { key: newKey(), name, text, called: name };
}

export function frontRow(quantity: string, entry: Partial<FrontRow> = {}): FrontRow {
  return { key: newKey(), quantity, prefer: 'low', ...entry };
}

/** A new form: five elements on a grid of 5 at.%, ranked by how well the atoms fit. */
export const emptyDraft: Draft = {
  name: '',
  marks: {},
  components: { min: '5', max: '5' },
  amounts: 'grid',
  step: 5,
  bounds: { min: '5', max: '35' },
  each: {},
  limits: [],
  rank: [rankRow('sizeMismatch')],
  lets: [],
  keptOnly: [],
  conditions: {},
  tally: 'each',
  front: [],
  keep: '1000',
  keepPerSystem: '1',
  others: {},
};

/** Symbols with one of the marks, alphabetical. */
export function marked(draft: Draft, ...marks: Mark[]): string[] {
  return Object.keys(draft.marks)
    .filter((symbol) => marks.includes(draft.marks[symbol]!))
    .sort();
}
