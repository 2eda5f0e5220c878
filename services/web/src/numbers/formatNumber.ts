/** What stands where a value is missing. */
export const noValue = '–';

const formats = new Map<number, Intl.NumberFormat>();

function formatWith(decimals: number): Intl.NumberFormat {
  const known = formats.get(decimals);
  if (known) return known;
  const made = new Intl.NumberFormat(navigator.language, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
  formats.set(decimals, made);
  return made;
}

/** A number in the reader's locale with as many decimals as mean something; a true minus sign, never '-0'. */
export function formatNumber(value: number | null | undefined, decimals: number): string {
  if (value === null || value === undefined) return noValue;
  const text = formatWith(decimals).format(value).replace('-', '−');
  return /[1-9]/.test(text) ? text : text.replace('−', '');
}

/** A whole number in the reader's locale. */
export function formatCount(value: number): string {
  return formatNumber(value, 0);
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
