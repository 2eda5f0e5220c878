/** A number stays with its sign and its unit: no line breaks inside '≤ 8 g/cm³'. */
const bound = /([≤≥]) (−?[\d.]+)(?: (?!to\b)([^\s,()]+)(?=[,)]|$))?/g;

/** A phrase as the beginning of a sentence or a line, that breaks where it reads well. */
export function asSentence(phrase: string): string {
  const whole = phrase
    .replace(/\b([A-Z][a-z]?) (?=[≤≥])/g, '$1\u00a0')
    .replace(bound, (_, sign: string, value: string, unit?: string) =>
      [sign, value, unit].filter((part) => part !== undefined).join('\u00a0'),
    );
  return whole.charAt(0).toUpperCase() + whole.slice(1);
}
