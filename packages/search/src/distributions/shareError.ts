/** Two-sided 95 % of the normal distribution. */
const z = 1.959963984540054;

/**
 * Half-width of the 95 % interval of a share that was counted in a random sample: the greater
 * distance to an end of Wilson's score interval, which is not 0 where none or all were counted.
 * @source Wilson, J. Am. Stat. Assoc. 22 (1927) 209 (equation from memory)
 */
export function shareError(share: number, sample: number): number {
  const weight = 1 + z ** 2 / sample;
  const centre = (share + z ** 2 / (2 * sample)) / weight;
  const half = (z / weight) * Math.sqrt((share * (1 - share)) / sample + z ** 2 / (4 * sample ** 2));
  return Math.abs(share - centre) + half;
}
