import type { SearchSpecification } from '@tiegel/contract';
import type { ShownQuantity } from '../../server/types.ts';
import type { PlotScale, PlotState, Wish } from './plotState.ts';

/** A plot with everything chosen that was not: quantities that the candidates have, and which values are better. */
export interface ChosenPlot {
  x: ShownQuantity;
  y: ShownQuantity;
  colour: ShownQuantity | null;
  wishes: [Wish, Wish];
  /** null: as the values ask for it */
  scales: [PlotScale | null, PlotScale | null];
}

/**
 * What a scatter shows: what the address names, else the first two quantities that the search
 * ranks and limits, coloured by the third. `quantities`: those first, then all others.
 */
export function usualPlot(
  { x, y, colour, wishes, scales }: PlotState,
  specification: SearchSpecification,
  quantities: readonly ShownQuantity[],
): ChosenPlot {
  const named = (id: string | null) => quantities.find((quantity) => quantity.id === id);
  const free = (...taken: (ShownQuantity | undefined)[]) =>
    quantities.find((quantity) => !taken.includes(quantity)) ?? quantities[0]!;
  const chosenX = named(x) ?? free(named(y));
  const chosenY = named(y) ?? free(chosenX);
  return {
    x: chosenX,
    y: chosenY,
    colour: colour === 'none' ? null : (named(colour) ?? free(chosenX, chosenY)),
    wishes: [wishes[0] ?? wishOf(chosenX.id, specification), wishes[1] ?? wishOf(chosenY.id, specification)],
    scales,
  };
}

/**
 * Which values a search wants of a quantity: as it ranks it, as its own front takes it, else away from its one
 * limit. A search that says nothing of it wants neither: no one direction holds for every quantity.
 */
function wishOf(quantity: string, { rank, front = [], limits }: SearchSpecification): Wish {
  const wanted = [...rank, ...front].find((entry) => entry.quantity === quantity);
  if (wanted !== undefined) return typeof wanted.prefer === 'object' ? 'none' : wanted.prefer;
  const limit = limits.find((entry) => entry.quantity === quantity);
  if (limit === undefined || (limit.min === undefined) === (limit.max === undefined)) return 'none';
  return limit.min === undefined ? 'low' : 'high';
}
