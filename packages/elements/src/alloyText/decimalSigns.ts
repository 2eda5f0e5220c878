/** A comma, or the point at half height of printed formulas, between digits: some write their decimals so. */
const sign = '(?<=[\\d₀-₉])[,·](?=[\\d₀-₉])';

/** Whether an amount is cut in two there: what stands before is then no amount of its own. */
export function isDecimalSign(text: string, index: number): boolean {
  const there = new RegExp(sign, 'y');
  there.lastIndex = index;
  return there.test(text);
}

/** The same text with decimal points. */
export const withDecimalPoints = (text: string): string => text.replaceAll(new RegExp(sign, 'g'), '.');
