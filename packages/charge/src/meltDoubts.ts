import type { MeltEntry } from '@tiegel/contract';
import { isPlain, materialOf } from './materialEntry.ts';
import { materialName } from './materialName.ts';
import type { Melt } from './meltOf.ts';
import type { ChargeLine, ChargeSheet } from './sheet.ts';

/** What is possible in a melt, and probably a slip of whoever wrote it down. */
export interface MeltDoubt {
  /** JSON pointer into the entry */
  pointer: string;
  /** a sentence; its numbers have a decimal point */
  text: string;
}

/** What follows from an entry, as far as it is known. */
export interface MeltComputed {
  /** null where the masses give no melt */
  melt: Melt | null;
  /** g/cm3, of the composition as weighed; null: unknown */
  density: number | null;
}

/** Of a mass on the sheet. Common practice, no source. */
const mostOffSheet = 0.05;
/** Of all that was charged: what a balance rounds, and what a crucible may give off. */
const mostGained = 0.01;
/** Of what the losses leave: more than splashes and what sticks to the hearth. Common practice, no source. */
const mostMissing = 0.1;
/** Of the computed density: real volumes differ by a few per cent, pores take as much again. Common practice, no source. */
const mostOffDensity = 0.1;
/** wt.%, below which two contents are the same: what somebody rounded. Ours, no source. */
const sameShare = 0.01;

/**
 * What to see again in a melt, in the order of the form; none of it stands in the way of recording: a batch may
 * have been halved, and an ingot may have burst. A melt is evidence for or against rules, so that a slip of the
 * decimal point would count as a measured alloy.
 * @param sheet its charge sheet; null where it has none
 */
export function meltDoubts(
  entry: MeltEntry,
  sheet: ChargeSheet | null,
  { melt, density }: MeltComputed,
): MeltDoubt[] {
  return [
    ...(sheet === null ? [] : doubtsOnSheet(entry, sheet)),
    ...ingotDoubts(entry, melt),
    ...densityDoubts(entry, density),
  ];
}

function doubtsOnSheet({ weighed }: MeltEntry, { lines, resolution }: ChargeSheet): MeltDoubt[] {
  const names = weighed.map(({ material }) => materialName(material));
  const ofRows = weighed.flatMap((row, at): MeltDoubt[] => {
    const { mass } = row;
    const name = names[at]!;
    const line = lines.find(({ material }) => materialName(material) === name);
    if (name === '') return [];
    if (line === undefined) {
      const text = `${name} is not on the charge sheet: see the material and the number of the sheet.`;
      return [{ pointer: `/weighed/${at}/material`, text }];
    }
    const described = descriptionDoubts(row, line, name).map(({ field, text }) => ({
      pointer: `/weighed/${at}/${field}`,
      text,
    }));
    // One step of the balance is never a slip, however little is weighed.
    if (!(Math.abs(mass - line.mass) > Math.max(line.mass * mostOffSheet, resolution * 1.001)))
      return described;
    const text = `${name}: ${mass} g were weighed, and the charge sheet says ${line.mass} g: see the mass.`;
    return [{ pointer: `/weighed/${at}/mass`, text }, ...described];
  });
  const missing = lines
    .map(({ material }) => material)
    .filter((material) => !names.includes(materialName(material)));
  if (missing.length === 0) return ofRows;
  const text = `On the charge sheet, and not weighed: ${missing.join(', ')}. See whether a row is missing.`;
  return [...ofRows, { pointer: '/weighed', text }];
}

/** What a row says of its material counts, for that lot was on the balance; or it is a slip. */
function descriptionDoubts(
  row: MeltEntry['weighed'][number],
  { contains, purity }: ChargeLine,
  name: string,
): { field: 'contains' | 'purity'; text: string }[] {
  const counts = 'what was written counts: see which is right.';
  const own = row.purity ?? purity;
  const ofPurity = `${name}: a purity of ${own} wt.% was written, and the charge sheet says ${purity} wt.%; ${counts}`;
  const ofContents = `${name}: its contents were written otherwise than on the charge sheet; ${counts}`;
  return [
    ...(own === purity ? [] : [{ field: 'purity' as const, text: ofPurity }]),
    ...(isAsWritten(row, name, contains) ? [] : [{ field: 'contains' as const, text: ofContents }]),
  ];
}

/** Whether a row leaves to the sheet what is in its material, or says the same. */
function isAsWritten(
  row: MeltEntry['weighed'][number],
  name: string,
  contains: ChargeLine['contains'],
): boolean {
  if (isPlain(row)) return true;
  const said = materialOf({ ...row, name }, '', '', [])?.contains;
  if (said === undefined) return false;
  const symbols = Object.keys({ ...said, ...contains });
  return symbols.every((symbol) => Math.abs((said[symbol] ?? 0) - (contains[symbol] ?? 0)) < sameShare);
}

function ingotDoubts({ ingot, weighed }: MeltEntry, melt: Melt | null): MeltDoubt[] {
  if (ingot === null || !(ingot > 0)) return [];
  const doubt = (text: string): MeltDoubt[] => [{ pointer: '/ingot', text }];
  const charged = weighed.reduce((grams, { mass }) => grams + mass, 0);
  if (ingot > charged * (1 + mostGained))
    return doubt(`The ingot weighs more than the ${charged.toFixed(3)} g that were charged: see both.`);
  if (melt === null || !(ingot < melt.expectedIngot * (1 - mostMissing))) return [];
  const missing = (100 * (1 - ingot / melt.expectedIngot)).toFixed(0);
  const expected = melt.expectedIngot.toFixed(3);
  return doubt(
    `The ingot is ${missing} % lighter than the ${expected} g that the masses leave after the losses: see both.`,
  );
}

function densityDoubts({ density: measured }: MeltEntry, computed: number | null): MeltDoubt[] {
  if (measured === null || !(measured > 0) || computed === null) return [];
  if (!(Math.abs(measured - computed) > computed * mostOffDensity)) return [];
  const text = `A density of ${measured} g/cm³ is far from the ${computed.toFixed(2)} g/cm³ that is computed of the masses: see both.`;
  return [{ pointer: '/density', text }];
}
