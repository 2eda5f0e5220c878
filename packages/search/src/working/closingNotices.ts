import type { Plan } from '@tiegel/contract';
import { inDigits, limitInWords, nameInSentence, printedUnit } from '@tiegel/contract/terms';
import { namedIn, ownOf } from '../namedIn.ts';
import type { Underway } from './underway.ts';

/** Of a result that was narrowed by what is worked out for kept ones only, fewer than this are too few to trust. */
const fewSurvivors = 50;
const mostKept = 1_000_000;

/** What must be said of a result: when no point passed, which limit leaves least; what became of the kept ones. */
export function closingNotices(
  search: Underway,
  found: { kept: number; seen: number },
  currency: string | null,
): string[] {
  return [
    ...nothingPassed(search, currency),
    ...survivors(search.plan, found, currency),
    ...cutFront(search, currency),
  ];
}

function survivors(
  { specification, columns }: Plan,
  { kept, seen }: { kept: number; seen: number },
  currency: string | null,
): string[] {
  const { keptOnly = [], keep } = specification;
  if (keptOnly.length === 0 || seen === 0) return [];
  const named = namedIn(currency, ownOf({ specification, columns: columns ?? [] }));
  const asked = keptOnly.map((limit) => limitInWords(limit, named)).join(' and ');
  const what = `${inDigits(kept)} of the ${inDigits(seen)} best have ${asked}: this was asked of these ${inDigits(seen)} alone, not of every point that passed`;
  if (kept >= fewSurvivors || seen < keep || keep >= mostKept) return [`${what}.`];
  const larger = Math.min(mostKept, keep * 10);
  return [
    `${what}. Fewer than ${fewSurvivors} are left: search again with "keep": ${larger} to ask it of more.`,
  ];
}

function nothingPassed({ outcome, plan }: Underway, currency: string | null): string[] {
  const { limits } = plan.specification;
  const { passed, passedEach, points, best, bestOfSystems } = outcome;
  const { keep, keepPerSystem } = plan.specification;
  const nothingKept = keep + keepPerSystem > 0 && best.length + bestOfSystems.length === 0;
  if (passed === null ? !nothingKept : passed > 0) return [];
  if (passedEach === null) {
    return ['No point meets all limits. Ask with tally "each" to see how much each limit leaves.'];
  }
  const least = passedEach.indexOf(Math.min(...passedEach));
  const limit = limits[least];
  if (limit === undefined) return [];
  const words = limitInWords(limit, namedIn(currency, ownOf(plan)));
  const alone = `The limit that leaves least by itself is ${words}: ${inDigits(passedEach[least]!)} of ${inDigits(points)} points`;
  return [`No point meets all limits. ${alone}.`];
}

/** What is not known of a front with more members than are kept. */
function cutFront({ outcome: { front }, plan }: Underway, currency: string | null): string[] {
  const [first] = plan.specification.front ?? [];
  if (first === undefined || !front?.cut) return [];
  const { name, unit } = namedIn(currency, ownOf(plan))(first.quantity);
  const value = `${front.cut[3]}${unit === '' ? '' : ` ${printedUnit(unit)}`}`;
  const side = first.prefer === 'high' ? 'down to' : 'up to';
  return [
    `The Pareto front is not complete: it has more than 100,000 members. All ${inDigits(front.members.length / (3 + plan.specification.front!.length))} that are kept belong to it, and none is missing ${side} ${nameInSentence(first.quantity, name)} ${value}; beyond that nothing is known.`,
  ];
}
