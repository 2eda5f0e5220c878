import { type Composition, type Measure, parseAlloy } from '@tiegel/elements';

/**
 * One alloy, of which the shell may have made several words ('Co20 Cr20 Fe20').
 * @throws ProblemError as parseAlloy does
 */
export function readAlloy(words: readonly string[], by: Measure): Composition {
  return parseAlloy(words.join(' '), { by });
}
