import { fileURLToPath } from 'node:url';
import type { Candidate } from '@tiegel/contract';
import { jsonOf } from '../../fixtures/tiegel.ts';
import type { Found } from '../independent/exhaustive.ts';
import { pricesFile, type Variant, written } from './variant.ts';

/** `tiegel search` as a process of its own, with further words and environment. */
export function cliVariant(words: readonly string[], environment: Record<string, string> = {}): Variant {
  return {
    async find(file): Promise<Found> {
      const asked = ['search', fileURLToPath(file), '--prices', fileURLToPath(pricesFile), ...words];
      const { counts, candidates } = await jsonOf(asked, { environment });
      return {
        counts,
        candidates: candidates.map(({ composition, score }: Candidate) => [written(composition), score]),
      };
    },
  };
}
