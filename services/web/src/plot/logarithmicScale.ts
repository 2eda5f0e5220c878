import type { Scale } from './linearScale.ts';

/** As linearScale, equal factors being equal lengths. Both ends are above 0; what is not has no place (NaN). */
export function logarithmicScale(from: number, to: number, start: number, end: number): Scale {
  const pixelsPerFactor = (end - start) / Math.log(to / from);
  return {
    kind: 'logarithmic',
    ...{ from, to, start, end },
    at: (value) => start + Math.log(value / from) * pixelsPerFactor,
    valueAt: (place) => from * Math.exp((place - start) / pixelsPerFactor),
  };
}

/** Ends of a logarithmic axis that holds both values: 1, 2 or 5 times a power of ten. */
export function logarithmicExtent(min: number, max: number): [number, number] {
  const below = roundFactors(min).findLast((value) => value <= min * (1 + 1e-9))!;
  const above = roundFactors(max).find((value) => value >= max * (1 - 1e-9))!;
  return below < above ? [below, above] : [below / 2, above * 2];
}

/** Marks of a logarithmic axis: 1, 2 and 5 times powers of ten where they are few, else powers alone. */
export function logarithmicTicks(from: number, to: number, most = 7): number[] {
  const [low, high] = [Math.floor(Math.log10(from)), Math.ceil(Math.log10(to))];
  const powers = Array.from({ length: high - low + 1 }, (_, place) => low + place);
  const within = (factors: number[]) =>
    powers
      .flatMap((power) => factors.map((factor) => Number(`${factor}e${power}`)))
      .filter((value) => value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9));
  return (
    [within([1, 2, 5]), within([1])].find((ticks) => ticks.length >= 2 && ticks.length <= most) ?? within([1])
  );
}

function roundFactors(value: number): number[] {
  const power = Math.floor(Math.log10(value));
  return [power - 1, power, power + 1].flatMap((one) =>
    [1, 2, 5].map((factor) => Number(`${factor}e${one}`)),
  );
}
