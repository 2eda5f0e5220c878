import { problem } from '@tiegel/contract/terms';
import { readText } from './readText.ts';

/**
 * The JSON of a file, '-' for standard input.
 * @param parse throws a SyntaxError for what is no JSON
 * @throws ProblemError file/malformed-json and those of readText
 */
export function readJson(file: string, parse: (text: string) => unknown = JSON.parse): unknown {
  try {
    return parse(readText(file));
  } catch (error) {
    if (error instanceof SyntaxError) throw problem('file/malformed-json', { file, found: error.message });
    throw error;
  }
}
