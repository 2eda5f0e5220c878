/** Below this share of the melting temperature atoms hardly change places, however long one waits. Common practice, no source. */
const FROZEN_BELOW = 0.3;

/**
 * What a sentence about a temperature must add where it is one at which nothing happens; '' where something does.
 * @param ratioToMelting the temperature over the mean melting temperature
 */
export function soCold(ratioToMelting: number): string {
  return ratioToMelting < FROZEN_BELOW ? ', though atoms hardly move so cold' : '';
}
