import { type Composition, weightToAtomicPercent } from '@tiegel/elements';
import { fractionOf, type Material } from './material.ts';

/** g of a material */
export interface Mass {
  material: Material;
  mass: number;
}

/** g of each element in masses of materials, by symbol. Impurities are no element. */
export function metalIn(masses: readonly Mass[]): Record<string, number> {
  const metal: Record<string, number> = {};
  for (const { material, mass } of masses) {
    for (const symbol of Object.keys(material.contains)) {
      metal[symbol] = (metal[symbol] ?? 0) + fractionOf(material, symbol) * mass;
    }
  }
  return metal;
}

/** The at.% that masses of materials give when these parts of their elements' masses (wt.%) evaporate. */
export function compositionOfMasses(
  masses: readonly Mass[],
  loss: Readonly<Record<string, number>>,
): Composition {
  const left = Object.entries(metalIn(masses)).map(
    ([symbol, grams]) => [symbol, grams * (1 - (loss[symbol] ?? 0) / 100)] as const,
  );
  return weightToAtomicPercent(Object.fromEntries(left));
}
