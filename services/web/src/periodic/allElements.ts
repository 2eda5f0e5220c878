import { type Element, unavailable, elements as withData } from '@tiegel/elements';

/** Every element of the periodic table, with data or without, in order of the atomic number. */
export const allElements: readonly Element[] = [...withData, ...unavailable].sort(
  (a, b) => a.atomicNumber - b.atomicNumber,
);

export const elementBySymbol: ReadonlyMap<string, Element> = new Map(
  allElements.map((element) => [element.symbol, element]),
);
