/** Why there is no strength near the melting point. */
export const TOO_HOT = 'No value above 0.9 of the melting temperature, where diffusion decides.';

/** The sentences that hold, as one text; null where none does. */
export function reasons(...sentences: (string | false)[]): string | null {
  return sentences.filter((sentence) => sentence !== false).join(' ') || null;
}
