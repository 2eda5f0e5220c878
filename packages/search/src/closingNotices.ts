import { limitInWords } from '@tiegel/contract';
import { grouped } from './grouped.ts';
import { namedIn } from './namedIn.ts';
import type { Underway } from './underway.ts';

/** What must be said of a result: when no point passed, which limit leaves least. */
export function closingNotices({ outcome, plan }: Underway, currency: string | null): string[] {
  const { limits } = plan.specification;
  const { passed, passedEach, points } = outcome;
  if (passed > 0) return [];
  const least = passedEach.indexOf(Math.min(...passedEach));
  const limit = limits[least];
  if (limit === undefined) return [];
  const words = limitInWords(limit, namedIn(currency));
  const alone = `The limit that leaves least by itself is ${words}: ${grouped(passedEach[least]!)} of ${grouped(points)} points`;
  return [`No point meets all limits. ${alone}.`];
}
