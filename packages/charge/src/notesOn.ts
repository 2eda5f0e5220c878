import { decimalsOf } from './onBalance.ts';
import type { ChargeSheet } from './sheet.ts';

type Charged = Omit<ChargeSheet, 'notes' | 'cautions'>;

/** What the masses mean: whose mass the batch mass is, what a purity and a loss stand for, what rounding does, what is not known. */
export function notesOn(sheet: Charged): string[] {
  return [
    ...batchNote(sheet),
    ...purityNotes(sheet),
    ...lossNotes(sheet),
    ...roundingNotes(sheet),
    ...costNotes(sheet),
    orderNote(sheet),
  ];
}

function batchNote({ mass, total, expected, resolution }: Charged): string[] {
  const decimals = decimalsOf(resolution);
  const ingot =
    expected.ingot === total ? '' : ` The ingot should weigh about ${expected.ingot.toFixed(decimals)} g.`;
  return [`The batch mass of ${mass} g is that of everything weighed, before melting.${ingot}`];
}

function purityNotes({ lines, expected, resolution }: Charged): string[] {
  const impure = lines.filter(({ purity }) => purity < 100);
  if (impure.length === 0) return ['Every material counts as 100 % pure.'];
  const named = impure.map(({ material, purity }) =>
    material.includes(`${purity} %`) ? material : `${material} ${purity} %`,
  );
  const grams = expected.impurities.toFixed(decimalsOf(resolution) + 1);
  return [
    `Purity is wt.% of the metal (${named.join(', ')}); the rest, ${grams} g in all, is of unknown composition: it is weighed and charged in excess, stays in the ingot, and is no part of the at.%.`,
  ];
}

function lossNotes({ loss, expected, resolution }: Charged): string[] {
  const made = Object.keys(loss).filter((symbol) => loss[symbol]! > 0);
  if (made.length === 0)
    return ['No loss in melting is made up for: what evaporates is missing from the alloy.'];
  const named = made.map(
    (symbol) =>
      `${symbol} ${loss[symbol]} % (${(expected.lost[symbol] ?? 0).toFixed(decimalsOf(resolution) + 1)} g)`,
  );
  return [
    `Expected losses are made up for: of the mass of ${named.join(', ')} is taken to evaporate. Everything else is taken to stay.`,
  ];
}

function roundingNotes({ lines, resolution, composition, resulting, rounding }: Charged): string[] {
  const off = Object.keys(composition).map((symbol) => Math.abs(resulting[symbol]! - composition[symbol]!));
  const most = Math.max(...Object.values(rounding));
  const note = `Masses are rounded to ${resolution} g; by rounding alone no share is off by more than ${significant(most)} at.% (here ${significant(Math.max(...off))} at.%).`;
  const rough = lines.filter(({ mass }) => resolution / 2 / mass > 0.01);
  if (rough.length === 0) return [note];
  const named = rough.map(
    ({ material, mass }) => `${material} (${((100 * resolution) / 2 / mass).toFixed(0)} %)`,
  );
  return [
    note,
    `Rounding is more than 1 % of the mass of ${named.join(', ')}: a larger batch, a finer balance or a master alloy would help.`,
  ];
}

function costNotes({ lines, cost }: Charged): string[] {
  if (cost !== null) return [];
  const unpriced = lines.filter(({ price }) => price === null).map(({ material }) => material);
  return [`No cost: ${unpriced.join(', ')} ${unpriced.length === 1 ? 'has' : 'have'} no price.`];
}

function orderNote({ lines }: Charged): string {
  const estimated = lines.some(({ melting }) => melting.estimated)
    ? ' The melting temperature of a master alloy is the mean of its elements where none was given.'
    : '';
  const graphite = lines.some(({ element }) => element === 'C')
    ? ' Graphite does not melt but dissolves, and the arc blows it away: lay it under the metal, or charge a master alloy with carbon.'
    : '';
  return `The order is that of laying on a cold hearth: the lowest-melting below, the highest-melting on top, where the arc strikes. In a crucible melt in the opposite order, and add what evaporates last. Common practice, no source.${graphite}${estimated}`;
}

function significant(number: number): string {
  if (number === 0) return '0';
  return number < 1e-9 ? '0' : String(Number(number.toPrecision(2)));
}
