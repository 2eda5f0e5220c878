/** More digits than a double has after the point would only repeat its binary form. */
const mostDecimals = 15;

/**
 * The ends of what a grid can reach as a message prints them: the lower one rounded down and the upper
 * one up, so that no value that is reached lies outside. With the decimals of the quantity, or as many
 * more as it takes for a limit that cannot be met to lie outside in print, too.
 */
export function printedEnds(
  { low, high }: { low: number; high: number },
  { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }: { min?: number; max?: number },
  decimals: number,
): { low: string; high: string } {
  for (let digits = decimals; digits <= mostDecimals; digits++) {
    const ends = { low: roundedTo(digits, low, -1), high: roundedTo(digits, high, 1) };
    const printsApart = min > high ? min > Number(ends.high) : max >= low || max < Number(ends.low);
    if (printsApart) return { low: forPrint(ends.low), high: forPrint(ends.high) };
  }
  return { low: forPrint(String(low)), high: forPrint(String(high)) };
}

/** With that many decimals, away from the inside of an interval: down for side -1, up for 1. */
function roundedTo(digits: number, value: number, side: -1 | 1): string {
  const nearest = value.toFixed(digits);
  const isOutside = side === 1 ? Number(nearest) >= value : Number(nearest) <= value;
  return isOutside ? nearest : (Number(nearest) + side * 10 ** -digits).toFixed(digits);
}

/** With the minus sign of print, and none before a zero. */
const forPrint = (text: string): string => text.replace(/^-(?=0*\.?0*$)/, '').replace('-', '−');
