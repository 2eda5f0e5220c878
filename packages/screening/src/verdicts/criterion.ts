import type { Source } from '../definition/quantity.ts';
import type { Predicate } from './predicate.ts';

/**
 * A published rule, as evidence: what it claims of an alloy that fulfils it. How often it was right
 * on published alloys is measured elsewhere and belongs beside every verdict.
 */
export interface Criterion {
  id: string;
  /** Whose rule it is, as cited. */
  name: string;
  /** What follows where the predicate holds, one sentence. */
  claim: string;
  predicate: Predicate;
  /** Which alloys the rule speaks of; of all others there is no verdict. null: of all. */
  scope: Predicate | null;
  /** What is right where the verdict is true. */
  positiveClass: PositiveClass;
  source: Source;
  /** What to beware of beside the verdict. */
  caution?: string;
}

/**
 * The class of alloys that a rule predicts.
 * - `what`: in words
 * - `observed`: how published labels show it: one disordered fcc or bcc solution, fcc or bcc alone
 *   among alloys of one solution, a Laves phase among the phases. null: they cannot show it
 * - `untested`: why not, where they cannot
 * - `isSecondPhase`: a phase beside the solution, so that a rule that is met is bad news
 */
export type PositiveClass = { what: string; isSecondPhase?: true } & (
  | { observed: 'one solution' | 'fcc of one solution' | 'bcc of one solution' | 'Laves phase' }
  | { observed: null; untested: string }
);

/** One disordered fcc or bcc solution, which most rules speak of. */
export const oneSolution: PositiveClass = {
  what: 'one disordered fcc or bcc solution',
  observed: 'one solution',
};
