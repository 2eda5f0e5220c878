import { gridOf, pointValues, prepare, sampleGrid } from '@tiegel/engine';
import { planOf, type SearchCase } from './searchCase.ts';

/** Points of a grid that are looked at to see what values a quantity has there. */
const looked = 60;

/** The finite values that quantities have at some points of a case, ascending, by id: an own one stands in the specification's lets. */
export function gridValues(of: SearchCase, ids: readonly string[], seed: number): Map<string, number[]> {
  const limits = ids.map((quantity) => ({ quantity, min: 0 }));
  const { program } = prepare(planOf({ ...of, specification: { ...of.specification, limits } }));
  const { points } = sampleGrid(gridOf(of.specification), looked, seed);
  const values = pointValues(program)(points);
  return new Map(
    ids.map((id, output) => [
      id,
      [...values[output]!].filter(Number.isFinite).sort((one, other) => one - other),
    ]),
  );
}
