import { formatCount, formatNumber } from './formatNumber.ts';

/** A number as sentences of the program write it, grouped or with decimals; not within a formula, a version or a doi. */
const number = /(?<![\w.,/-])(?:(\d{1,3}(?:,\d{3})+)(?![\w,]|\.\d)|\d+\.(\d+)(?!\w|\.\d|\/))/g;

/**
 * A sentence of the server or of a shared package, whose numbers have a decimal point, with them as the reader's locale
 * writes them: beside numbers of the page, 1.175 would be read as a thousand and more where the comma is decimal.
 * Never for a text that the page composed itself: its numbers are in the locale already.
 */
export function inLocale(text: string): string {
  return text.replace(number, (written, grouped?: string, decimals = '') =>
    grouped === undefined
      ? formatNumber(Number(written), decimals.length)
      : formatCount(Number(grouped.replaceAll(',', ''))),
  );
}

/** The keys under which the server tells sentences. */
const told = new Set([
  'caution',
  'claim',
  'formula',
  'meaning',
  'reason',
  'text',
  'trust',
  'untested',
  'what',
  'words',
]);

/** An answer of the server with its sentences in the reader's locale; everything else, and names, as they came. */
export function answerInLocale<Answer>(answer: Answer): Answer {
  if (Array.isArray(answer)) return answer.map(answerInLocale) as Answer;
  if (typeof answer !== 'object' || answer === null) return answer;
  const entries = Object.entries(answer).map(([key, value]) => [
    key,
    typeof value === 'string' ? (told.has(key) ? inLocale(value) : value) : answerInLocale(value),
  ]);
  return Object.fromEntries(entries) as Answer;
}
