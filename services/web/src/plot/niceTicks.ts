/** Where an axis has its marks, and how many decimals tell them apart. */
export interface Ticks {
  values: number[];
  step: number;
  decimals: number;
}

const steps = [1, 2, 5, 10];

/**
 * Marks of an axis from `min` to `max`: multiples of 1, 2 or 5 times a power of ten, both ends
 * included where they are such, at most `most` of them. An axis without extent has its one value.
 */
export function niceTicks(min: number, max: number, most = 7): Ticks {
  if (!(max > min)) return { values: [min], step: 0, decimals: decimalsOf(min) };
  const rough = (max - min) / Math.max(1, most - 1);
  const power = Math.floor(Math.log10(rough) + 1e-9);
  const factor = steps.find((one) => one * 10 ** power >= rough * (1 - 1e-9))!;
  const decimals = Math.max(0, -power - (factor === 10 ? 1 : 0));
  const step = factor * 10 ** power;
  // Counted in steps, so that no rounding adds up, and a mark on an end is not lost to it.
  const first = Math.ceil(min / step - 1e-9);
  const last = Math.floor(max / step + 1e-9);
  const values = Array.from({ length: last - first + 1 }, (_, place) =>
    Number(((first + place) * step).toFixed(decimals)),
  );
  return { values: values.map((value) => (value === 0 ? 0 : value)), step, decimals };
}

/** The extent widened to whole steps of its marks, so that the outermost values lie inside the axis. */
export function niceExtent(min: number, max: number, most = 7): [number, number] {
  if (!(max > min)) {
    const room = Math.max(Math.abs(min) * 0.05, 0.5);
    return [min - room, min + room];
  }
  const { step, decimals } = niceTicks(min, max, most);
  const round = (value: number) => Number(value.toFixed(decimals));
  return [round(Math.floor(min / step + 1e-9) * step), round(Math.ceil(max / step - 1e-9) * step)];
}

function decimalsOf(value: number): number {
  return Math.min(6, String(value).split('.')[1]?.length ?? 0);
}
