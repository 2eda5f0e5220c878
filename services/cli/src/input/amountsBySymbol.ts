import { InvalidArgumentError } from 'commander';

/**
 * Collects an option such as --purity Mn=99.7, given once or several times, or with commas between:
 * numbers by symbol. Whether symbols and numbers are possible is said where they are used.
 */
export function amountsBySymbol(text: string, before: Record<string, number> = {}): Record<string, number> {
  const amounts = { ...before };
  for (const part of text.split(',')) {
    const found = /^\s*([A-Za-z]{1,3})\s*=\s*(\d+(?:\.\d+)?|\.\d+)\s*%?\s*$/.exec(part);
    if (found === null)
      throw new InvalidArgumentError(`Write a symbol and a number, as in Mn=99.7, not "${part}".`);
    const [, symbol = '', amount] = found;
    if (symbol in amounts) throw new InvalidArgumentError(`${symbol} stands there twice.`);
    amounts[symbol] = Number(amount);
  }
  return amounts;
}

/** The number of an option in grams. */
export function grams(text: string): number {
  if (/^\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i.test(text.trim())) return Number(text);
  throw new InvalidArgumentError('It must be a number of grams with a decimal point, such as 50 or 0.001.');
}

/** The number of an option in grams, above 0. */
export function gramsAboveZero(text: string): number {
  const read = grams(text);
  if (read > 0) return read;
  throw new InvalidArgumentError('It must be above 0 g, such as 50 or 0.001.');
}
