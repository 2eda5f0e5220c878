import { inLocale } from '../numbers/inLocale.ts';

/** A number stays with its sign and its unit: no line breaks inside '≤ 8 g/cm³'. */
const bound = /([≤≥]) (−?[\d.]+)(?: (?!to\b)([^\s,()]+)(?=[,)]|$))?/g;

/**
 * A phrase of the server or of packages/contract as the beginning of a sentence or a line, that breaks where it reads
 * well, in the reader's locale.
 * @param own names of a search's own expressions: where the phrase begins with one it gets no capital, which could
 *   make another's name of it
 */
export function asSentence(phrase: string, own: readonly string[] = []): string {
  const whole = phrase
    .replace(/\b([A-Z][a-z]?) (?=[≤≥])/g, '$1\u00a0')
    .replace(bound, (_, sign: string, value: string, unit?: string) =>
      [sign, value, unit].filter((part) => part !== undefined).join('\u00a0'),
    );
  const written = inLocale(whole);
  const [first = ''] = /^\w+/.exec(phrase) ?? [];
  return own.includes(first) ? written : written.charAt(0).toUpperCase() + written.slice(1);
}
