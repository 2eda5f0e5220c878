/** What stands where a value is missing. */
export const noValue = '–';

const formats = new Map<string, Intl.NumberFormat>();

function formatWith(decimals: number, useGrouping: 'always' | 'min2'): Intl.NumberFormat {
  const key = `${useGrouping} ${decimals}`;
  const known = formats.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(navigator.language, {
    useGrouping,
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
  formats.set(key, made);
  return made;
}

/**
 * A number in the reader's locale with as many decimals as mean something; a true minus sign, never '-0'.
 * Four digits stay together (1811 K, as sentences and fields write it), more are grouped.
 * @source SI Brochure, 9th edition (BIPM 2019), 5.4.4: four digits are customarily not parted (from memory)
 */
export function formatNumber(value: number | null | undefined, decimals: number): string {
  if (value === null || value === undefined) return noValue;
  return signed(formatWith(decimals, 'min2').format(value));
}

/** How many there are, in the reader's locale and grouped: '1,022'. */
export function formatCount(value: number): string {
  return signed(formatWith(0, 'always').format(value));
}

function signed(formatted: string): string {
  const text = formatted.replace('-', '−');
  return /[1-9]/.test(text) ? text : text.replace('−', '');
}

/** A part of a whole in percent: two significant digits below 1 %, never 0 for something or 100 for less than all. */
export function formatPercent(part: number, whole: number): string {
  if (whole === 0) return noValue;
  const percent = (100 * part) / whole;
  if (percent > 0 && percent < 0.01) return `< ${formatNumber(0.01, 2)} %`;
  if (part < whole && percent >= 99.95) return '< 100 %';
  const decimals = part === 0 || part === whole ? 0 : percent < 1 ? 2 : 1;
  return `${formatNumber(percent, decimals)} %`;
}
