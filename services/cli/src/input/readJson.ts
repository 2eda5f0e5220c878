import { problem } from '@tiegel/contract/terms';
import { readText } from './readText.ts';

/**
 * The JSON of a file, '-' for standard input.
 * @throws ProblemError file/malformed-json and those of readText
 */
export function readJson(file: string): unknown {
  try {
    return JSON.parse(readText(file));
  } catch (error) {
    if (error instanceof SyntaxError) throw problem('file/malformed-json', { file, found: error.message });
    throw error;
  }
}
