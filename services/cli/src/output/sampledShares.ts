import type { Distributions } from '@tiegel/contract';
import { inDigits } from '@tiegel/contract/terms';

/** What each limit leaves of a grid, a line each: counted in a sample, and said to be, or in all points of a small grid. */
export function* sampledShares(
  { limits, passed, error, sample, points }: Distributions,
  limitsInWords: readonly string[],
): Generator<string> {
  if (limits.length === 0) return;
  const of = sample === points ? 'the points' : `${inDigits(sample)} points drawn at random`;
  yield `Of ${of} each limit is met by\n`;
  for (const [place, { share }] of limits.entries()) yield `  ${limitsInWords[place]}: ${percent(share)}\n`;
  const within = error === 0 ? '' : ` ± ${percent(error)}`;
  yield `  all together: ${percent(passed)}${within}\n`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(share < 0.1 ? 2 : 1)} %`;
}
