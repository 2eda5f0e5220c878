/** A phrase as the beginning of a sentence or a line. */
export function capitalised(phrase: string): string {
  return phrase.charAt(0).toUpperCase() + phrase.slice(1);
}
