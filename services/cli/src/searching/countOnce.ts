import type { Limit } from '@tiegel/contract';
import { inDigits } from '@tiegel/contract/terms';
import { boundsOf } from '../output/boundsOf.ts';
import { durationInWords, wrapped } from '../output/inWords.ts';
import { jsonText } from '../output/jsonText.ts';
import { sampledShares } from '../output/sampledShares.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { openSearching, type SearchingOptions } from './openSearching.ts';

const leavesOut =
  'Not every point is looked at: what surely cannot be among the best, or surely passes or fails, is left out. The result is the same.';

/** `count SPEC`: writes how large a search is. */
export async function countOnce(
  request: unknown,
  options: SearchingOptions & { json?: true },
): Promise<void> {
  const { searches, close } = await openSearching(options);
  try {
    const { systems, points, seconds, atMost, question, notices } = await searches.size(request);
    for (const notice of notices) console.error(`Notice: ${notice}`);
    const time =
      seconds === null ? '' : `, ${atMost ? 'at most' : 'about'} ${durationInWords(seconds)} to search`;
    // Checked by now.
    const { limits = [] } = request as { limits?: Limit[] };
    const distributions = searches.distributions({ specification: request, quantities: [] });
    const text = [
      `${wrapped(question)}\n`,
      `${inDigits(systems)} systems, ${inDigits(points)} points${time}\n`,
      ...sampledShares(distributions, limits.map(boundsOf)),
      ...(atMost ? [`${wrapped(leavesOut)}\n`] : []),
    ];
    await standardOutput(options.json ? jsonText({ systems, points }) : text);
  } finally {
    await close();
  }
}
