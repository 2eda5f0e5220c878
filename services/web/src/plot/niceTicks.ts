/** Where an axis has its marks, and how many decimals tell them apart. */
export interface Ticks {
  values: number[];
  step: number;
  decimals: number;
}

/** 1, 2 or 5 times a power of ten. */
interface RoundStep {
  factor: 1 | 2 | 5;
  power: number;
}

/**
 * Marks of an axis from `min` to `max`: multiples of 1, 2 or 5 times a power of ten, both ends
 * included where they are such, as many as there can be up to `most`. An axis without extent has its one value.
 */
export function niceTicks(min: number, max: number, most = 7): Ticks {
  if (!(max > min)) return { values: [min], step: 0, decimals: decimalsOf(min) };
  // A step that suits any place of the ends may leave a short axis with one mark, where a finer one still fits.
  let chosen: RoundStep = { factor: 1, power: Math.ceil(Math.log10((max - min) / Math.max(1, most - 1))) };
  for (let finer = finerThan(chosen); within(min, max, finer).count <= most; finer = finerThan(chosen))
    chosen = finer;
  const { step, first, count } = within(min, max, chosen);
  const decimals = Math.max(0, -chosen.power);
  const values = Array.from({ length: count }, (_, place) =>
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

function finerThan({ factor, power }: RoundStep): RoundStep {
  if (factor === 1) return { factor: 5, power: power - 1 };
  return { factor: factor === 5 ? 2 : 1, power };
}

/** Counted in steps, so that no rounding adds up, and a mark on an end is not lost to it. */
function within(min: number, max: number, { factor, power }: RoundStep) {
  const step = factor * 10 ** power;
  const first = Math.ceil(min / step - 1e-9);
  return { step, first, count: Math.floor(max / step + 1e-9) - first + 1 };
}

function decimalsOf(value: number): number {
  return Math.min(6, String(value).split('.')[1]?.length ?? 0);
}
