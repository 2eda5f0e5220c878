import { durationInWords, grouped, wrapped } from '../output/inWords.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { openSearching, type SearchingOptions } from './openSearching.ts';

/** `count SPEC`: writes how large a search is. */
export async function countOnce(
  request: unknown,
  options: SearchingOptions & { json?: true },
): Promise<void> {
  const { searches, close } = await openSearching(options);
  try {
    const { systems, points, seconds, question, notices } = await searches.size(request);
    for (const notice of notices) console.error(`Notice: ${notice}`);
    const time = seconds === null ? '' : `, about ${durationInWords(seconds)} to search`;
    const text = [
      `${wrapped(question)}\n`,
      `${grouped(systems)} systems, ${grouped(points)} points${time}\n`,
    ];
    await standardOutput(options.json ? jsonText({ systems, points }) : text);
  } finally {
    await close();
  }
}
