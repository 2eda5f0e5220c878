import { formatCount, formatNumber, formatPercent } from './formatNumber.ts';

/** Hits below which a percentage would promise too much. */
const fewHits = 10;
/** Two-sided 95 % of the normal distribution. */
const z = 1.959963984540054;

/**
 * What part of the space a number of hits in a sample stands for, with its 95 % interval:
 * '12.9 % ± 1.0'. Where no hit was drawn only the upper end of the interval is known: 'fewer
 * than 1 in 1,000'. `whole`: the sample is the space, and nothing is uncertain.
 */
export function shareInWords(hits: number, size: number, whole: boolean): string {
  if (whole || size === 0) return formatPercent(hits, size);
  const error = shareError(hits / size, size);
  if (hits === 0) return `fewer than 1 in ${formatCount(roundedDown(1 / error))}`;
  if (hits === size) return `more than ${formatNumber(100 * (1 - error), 1)} %`;
  if (hits < fewHits) return `about 1 in ${formatCount(rounded(size / hits, 2))}`;
  return `${formatPercent(hits, size)} ± ${formatNumber(100 * error, error < 0.000_95 ? 2 : 1)}`;
}

/** How many compositions that are, of `points`: 'about 4,970 ± 390 of 38,494 compositions'. */
export function countInWords(hits: number, size: number, points: number, whole: boolean): string {
  const of = `of ${formatCount(points)} compositions`;
  if (whole) return `${formatCount(hits)} ${of}`;
  const error = shareError(hits / size, size) * points;
  if (hits === 0) return `probably fewer than ${formatCount(rounded(error, 2))} ${of}`;
  const about = `about ${formatCount(rounded((hits / size) * points, hits < fewHits ? 1 : 3))}`;
  return hits < fewHits || hits === size
    ? `${about} ${of}`
    : `${about} ± ${formatCount(rounded(error, 2))} ${of}`;
}

/**
 * Half-width of the 95 % interval of a share that was counted in a random sample: the greater
 * distance to an end of Wilson's score interval, which is not 0 where none or all were counted.
 * @source Wilson, J. Am. Stat. Assoc. 22 (1927) 209 (equation from memory)
 */
export function shareError(share: number, size: number): number {
  const weight = 1 + z ** 2 / size;
  const centre = (share + z ** 2 / (2 * size)) / weight;
  const half = (z / weight) * Math.sqrt((share * (1 - share)) / size + z ** 2 / (4 * size ** 2));
  return Math.abs(share - centre) + half;
}

/** To so many significant digits: a sample does not promise more. */
function rounded(value: number, digits: number): number {
  return value < 10 ? Math.ceil(value) : Number(value.toPrecision(digits));
}

/** To two significant digits, downwards: 'fewer than' must stay true. */
function roundedDown(value: number): number {
  const unit = 10 ** Math.max(0, Math.floor(Math.log10(value)) - 1);
  return Math.floor(value / unit) * unit;
}
