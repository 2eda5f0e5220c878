import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';

const LONGEST_NAME = 200;

/**
 * The name of a search: one line of text. What many programs end a line at (a line feed, U+2028,
 * U+2029) would break the head of an export, half a surrogate pair its encoding.
 */
export const nameSchema = z
  .string()
  .max(LONGEST_NAME)
  .check((payload) => {
    if (/[\p{Cc}\p{Zl}\p{Zp}]/u.test(payload.value) || !payload.value.isWellFormed())
      report(payload, 'specification/name');
  })
  .describe(`Write one line of at most ${LONGEST_NAME} characters.`);
