import type { Fault } from '@tiegel/contract';

/** Index of the character at which a formula is wrong, as its fault tells it in words; null where it is wrong as a whole. */
export function placeInFormula({ detail }: Fault): number | null {
  const place = /\bat character (\d+)/.exec(detail)?.[1];
  return place === undefined ? null : Number(place) - 1;
}
