import { solve } from 'yalps';
import { fractionOf, type Material } from './material.ts';

/**
 * The solver's tolerance, on masses whose sum is one. Its default of 1e-8 would be 0.5 µg of a
 * batch of 50 g, and is what its answers are rounded to.
 */
const PRECISION = 1e-12;

/** A material without a price costs this many times the dearest one: it is taken only where none with a price will do. */
const UNPRICED = 1000;

/**
 * The cheapest set of materials that holds exactly these masses of the elements and nothing else but
 * impurities: a linear programme, one equation for each element.
 *
 * What is made the least is the cost of the alloy, not of the batch: with the batch's mass fixed
 * instead, dirt would be the cheapest thing to weigh.
 *
 * @param masses by symbol, each above 0, of sum 1
 * @returns mass of each material that is used, in the unit of `masses`; null where no set does it
 */
export function cheapestMaterials(
  materials: readonly Material[],
  masses: Readonly<Record<string, number>>,
): Map<Material, number> | null {
  const solution = solve<Material, string>(
    {
      direction: 'minimize',
      objective: 'cost',
      constraints: Object.entries(masses).map(([symbol, mass]) => [symbol, { equal: mass }] as const),
      variables: priced(usable(materials, masses)).map(([material, cost]) => [
        material,
        [['cost', cost], ...shares(material)],
      ]),
    },
    { precision: PRECISION, checkCycles: true },
  );
  if (solution.status !== 'optimal') return null;
  const used = new Map(solution.variables);
  return meets(used, masses) ? used : null;
}

/**
 * What is missing of each element where as much as possible is made of the others without too much of
 * any: those that no set of materials can bring in full, by symbol. Empty: there is such a set.
 */
export function shortages(
  materials: readonly Material[],
  masses: Readonly<Record<string, number>>,
): Record<string, number> {
  // Using nothing is always allowed here, so there is always an answer.
  const { variables } = solve<Material, string>(
    {
      direction: 'maximize',
      objective: 'metal',
      constraints: Object.entries(masses).map(([symbol, mass]) => [symbol, { max: mass }] as const),
      variables: usable(materials, masses).map((material) => [
        material,
        [['metal', material.purity / 100], ...shares(material)],
      ]),
    },
    { precision: PRECISION, checkCycles: true },
  );
  const brought = broughtBy(new Map(variables));
  const missing = Object.entries(masses).map(
    ([symbol, mass]) => [symbol, mass - (brought[symbol] ?? 0)] as const,
  );
  return Object.fromEntries(missing.filter(([symbol, mass]) => mass > rounding(masses[symbol]!)));
}

/** Less than this missing of a mass is rounding of the solver: of a trace, its last digits. */
const rounding = (mass: number): number => Math.max(mass * 1e-7, 10 * PRECISION);

/** Materials with nothing in them that the alloy has not. */
export function usable(materials: readonly Material[], masses: Readonly<Record<string, number>>): Material[] {
  return materials.filter(({ contains }) => Object.keys(contains).every((symbol) => symbol in masses));
}

/** With costs between 0 and 1, so that the tolerance means the same in every currency. */
function priced(materials: readonly Material[]): [Material, number][] {
  const dearest = Math.max(...materials.map(({ price }) => price ?? 0)) || 1;
  const highest = materials.some(({ price }) => price === null) ? UNPRICED : 1;
  return materials.map((material) => [
    material,
    (material.price === null ? UNPRICED : material.price / dearest) / highest,
  ]);
}

const shares = (material: Material): [string, number][] =>
  Object.keys(material.contains).map((symbol) => [symbol, fractionOf(material, symbol)]);

function broughtBy(used: ReadonlyMap<Material, number>): Record<string, number> {
  const brought: Record<string, number> = {};
  for (const [material, mass] of used) {
    for (const [symbol, fraction] of shares(material)) {
      brought[symbol] = (brought[symbol] ?? 0) + fraction * mass;
    }
  }
  return brought;
}

function meets(used: ReadonlyMap<Material, number>, masses: Readonly<Record<string, number>>): boolean {
  const brought = broughtBy(used);
  return Object.entries(masses).every(
    ([symbol, mass]) => Math.abs((brought[symbol] ?? 0) - mass) <= rounding(mass),
  );
}
