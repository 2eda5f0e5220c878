import { type Composition, elementNumber } from '@tiegel/elements';
import { cautionsFor } from './cautions.ts';
import { type ChargeRequest, checkRequest } from './chargeRequest.ts';
import { cheapestMaterials } from './cheapestMaterials.ts';
import { compositionOfMasses, metalIn } from './compositionOfMasses.ts';
import { elementOnlyIn, type Material, meltingOf } from './material.ts';
import { meltingWindow } from './meltingWindow.ts';
import { notesOn } from './notesOn.ts';
import { massOf, stepsOf } from './onBalance.ts';
import { lightestLine, refuseTraces, refuseUnmeetable, refuseUnweighable } from './refusals.ts';
import { roundingBounds } from './roundingBounds.ts';
import type { ChargeLine, ChargeSheet } from './sheet.ts';

/**
 * What to weigh for a batch: the cheapest set of the materials that gives the target after the
 * expected losses, each mass rounded to the balance, and what comes of the rounded masses.
 *
 * The batch mass is that of everything that is weighed, impurities and expected losses included. A
 * purity's remainder is of unknown composition: weighed, but no part of any share. Masses are rounded
 * each by itself, so that each is as near as the balance allows; the total is the batch mass within
 * half a step for each line.
 *
 * @throws ProblemError request/wrong-value, element/unknown, element/no-data, materials/..., and
 *   charge/not-in-alloy, charge/cannot-be-met, charge/too-light
 */
export function chargeSheet(request: ChargeRequest): ChargeSheet {
  checkRequest(request);
  const { composition, mass, resolution, loss = {}, currency } = request;
  const needed = neededMasses(composition, loss);
  refuseTraces(needed, composition);
  const used = cheapestMaterials(request.materials, needed);
  if (used === null) throw refuseUnmeetable(request.materials, needed, composition);

  const sum = [...used.values()].reduce((total, one) => total + one, 0);
  const exact = [...used]
    .map(([material, part]) => ({ material, exact: (part / sum) * mass }))
    .sort((a, b) => (a.material.name < b.material.name ? -1 : 1));
  const weighed = exact.map((one) => ({ ...one, steps: stepsOf(one.exact, resolution) }));
  if (weighed.some(({ steps }) => steps === 0))
    throw refuseUnweighable(lightestLine(exact), mass, resolution);

  const lines = weighed.map(({ material, exact: unrounded, steps }) =>
    lineOf(material, unrounded, massOf(steps, resolution)),
  );
  const materials = weighed.map(({ material }) => material);
  const grams = lines.map((line) => line.mass);
  const masses = materials.map((material, at) => ({ material, mass: grams[at]! }));
  const metal = metalIn(masses);
  const lost = mapped(loss, (percent, symbol) => ((metal[symbol] ?? 0) * percent) / 100);
  const total = massOf(
    weighed.reduce((steps, one) => steps + one.steps, 0),
    resolution,
  );
  const impurities = materials.reduce(
    (grams_, { purity }, at) => grams_ + grams[at]! * (1 - purity / 100),
    0,
  );
  const ordered = lines.toSorted((a, b) => a.melting.temperature - b.melting.temperature);
  const sheet = {
    ...{ composition, mass, resolution, lines, total, loss: { ...loss } },
    resulting: compositionOfMasses(masses, loss),
    rounding: roundingBounds(materials, grams, { resolution, loss, composition }),
    cost: costOf(lines),
    currency,
    order: ordered.map(({ material }) => material),
    window: meltingWindow(Object.keys(composition)),
    expected: {
      lost,
      impurities,
      ingot: total - Object.values(lost).reduce((grams_, one) => grams_ + one, 0),
    },
  };
  return { ...sheet, notes: notesOn(sheet), cautions: cautionsFor(sheet, request.pairs) };
}

/** Mass of each element that must be charged for the target after its losses; 1 in all. */
function neededMasses(
  composition: Composition,
  loss: Readonly<Record<string, number>>,
): Record<string, number> {
  const masses = mapped(
    composition,
    (share, symbol) => (share * atomicMass(symbol)) / (1 - (loss[symbol] ?? 0) / 100),
  );
  const sum = Object.values(masses).reduce((total, one) => total + one, 0);
  return mapped(masses, (one) => one / sum);
}

function lineOf(material: Material, exact: number, mass: number): ChargeLine {
  const { name, contains, purity, price } = material;
  const cost = price === null ? null : (price * mass) / 1000;
  return {
    ...{ material: name, element: elementOnlyIn(material), mass, exact, contains, purity, price, cost },
    melting: meltingOf(material),
  };
}

function costOf(lines: readonly ChargeLine[]): number | null {
  return lines.reduce<number | null>(
    (sum, { cost }) => (sum === null || cost === null ? null : sum + cost),
    0,
  );
}

const atomicMass = (symbol: string): number => elementNumber(symbol, 'atomicMass')!;

function mapped(
  values: Readonly<Record<string, number>>,
  change: (value: number, symbol: string) => number,
): Record<string, number> {
  return Object.fromEntries(Object.entries(values).map(([symbol, value]) => [symbol, change(value, symbol)]));
}
