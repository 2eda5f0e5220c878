import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { problem } from '@tiegel/contract/terms';

const STANDARD_INPUT = 0;
const greatestSize = 50_000_000;

/**
 * The text of a file, '-' for standard input. It is UTF-8, as in the body of a request: of bytes of another encoding,
 * which some spreadsheets and shells write, other letters would be stored.
 * @throws ProblemError file/unreadable, file/too-large, file/encoding
 */
export function readText(file: string): string {
  const text = textOf(readBytes(file), file);
  if (text.length > greatestSize) {
    throw problem('file/too-large', { file, size: text.length, limit: greatestSize });
  }
  return text;
}

/** Without the mark that some editors put first. */
function textOf(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw problem('file/encoding', { file });
  }
}

/**
 * A file as it is, '-' for standard input.
 * @throws ProblemError file/unreadable
 */
export function readBytes(file: string): Buffer<ArrayBuffer> {
  try {
    return readFileSync(file === '-' ? STANDARD_INPUT : placeOf(file));
  } catch (error) {
    throw problem('file/unreadable', { file, why: whyOf(error as NodeJS.ErrnoException) });
  }
}

/** `npm run tiegel` runs in the project's folder and tells where the person stood. */
export function placeOf(file: string): string {
  const { npm_lifecycle_event, INIT_CWD } = process.env;
  return npm_lifecycle_event === 'tiegel' && INIT_CWD ? resolve(INIT_CWD, file) : resolve(file);
}

/** Why a file does not open, in words. */
export function whyOf({ code, message }: NodeJS.ErrnoException): string {
  const words: Record<string, string> = {
    ENOENT: 'there is no such file',
    EISDIR: 'it is a folder',
    EACCES: 'it may not be read',
  };
  return words[code ?? ''] ?? message;
}
