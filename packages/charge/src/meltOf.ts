import type { MeltEntry } from '@tiegel/contract';
import { type Fault, fault, limited, type ObservablePhase, ProblemError } from '@tiegel/contract/terms';
import type { Composition } from '@tiegel/elements';
import { finestResolution, purityFault, wrong } from './chargeRequest.ts';
import { compositionOfMasses, type Mass, metalIn } from './compositionOfMasses.ts';
import type { Material } from './material.ts';
import { isPlain, materialOf } from './materialEntry.ts';
import { materialName } from './materialName.ts';
import type { ChargeLine, ChargeSheet } from './sheet.ts';

/** What a melt is, worked out from what was written down of it. */
export interface Melt {
  /** at.%, of the masses that were weighed, after the losses: takes the place of the nominal one */
  composition: Composition;
  /** at.%, the target of the charge sheet; null without one */
  nominal: Composition | null;
  /** Symbols, alphabetical, joined by a hyphen. */
  system: string;
  /** Observed phases in the order of the published labels, as in 'FCC+B2'; null: not looked at */
  label: string | null;
  /** wt.% by symbol that the composition takes as evaporated */
  lost: Record<string, number>;
  /** g, of all that was weighed but for what is taken to evaporate */
  expectedIngot: number;
}

/** Solutions first, then ordered and second phases, as in published labels. */
const order: readonly ObservablePhase[] = [
  'FCC',
  'BCC',
  'HCP',
  'L12',
  'B2',
  'Laves',
  'sigma',
  'mu',
  'carbide',
  'other',
];

/**
 * The melt that an entry describes.
 * @param sheet its charge sheet, which says what is in each material by its name where the entry does not; null where it has none
 * @throws ProblemError melt/phase-twice, melt/method-missing, melt/weighed-twice, charge/not-in-alloy,
 *   request/wrong-value, and those of a material that no sheet knows
 */
export function meltOf(entry: MeltEntry, sheet: ChargeSheet | null): Melt {
  const faults: Fault[] = observationFaults(entry);
  const weighed = entry.weighed.map((one, at) => {
    const pointer = `/weighed/${at}`;
    const name = materialName(one.material);
    const known = sheet?.lines.find(({ material: listed }) => materialName(listed) === name);
    if (!(one.mass >= finestResolution)) {
      const right = `Give what the balance showed, at least ${finestResolution.toFixed(7)} g.`;
      faults.push(wrong(`The mass of "${name}"`, `${one.mass} g`, right, `${pointer}/mass`));
    }
    return { material: weighedMaterial(one, known, pointer, faults), mass: one.mass };
  });
  const names = entry.weighed.map(({ material }) => materialName(material));
  names.forEach((name, at) => {
    if (names.indexOf(name) < at)
      faults.push(fault('melt/weighed-twice', { name }, `/weighed/${at}/material`));
  });
  const lost = entry.loss ?? sheet?.loss ?? {};
  if (faults.length > 0) throw new ProblemError(faults);
  const whole = weighed.flatMap(({ material, mass }) => (material === null ? [] : [{ material, mass }]));
  const present = new Set(whole.flatMap(({ material }) => Object.keys(material.contains)));
  const wrongLosses = lossFaults(entry.loss ?? {}, present);
  if (wrongLosses.length > 0) throw new ProblemError(limited(wrongLosses));
  const composition = compositionOfMasses(whole, lost);
  return {
    composition,
    nominal: sheet?.composition ?? null,
    system: Object.keys(composition).sort().join('-'),
    label: entry.phases === null ? null : order.filter((phase) => entry.phases!.includes(phase)).join('+'),
    lost: { ...lost },
    expectedIngot: expectedIngot(whole, lost),
  };
}

/**
 * What was weighed: what the entry says of it, for that lot was on the balance, and else the sheet.
 * @param known the line of the sheet with its name
 */
function weighedMaterial(
  entry: MeltEntry['weighed'][number],
  known: ChargeLine | undefined,
  pointer: string,
  faults: Fault[],
): Material | null {
  if (known === undefined) return materialOf({ ...entry, name: entry.material }, pointer, '', faults);
  const purity = entry.purity ?? known.purity;
  if (!isPlain(entry)) return materialOf({ ...entry, purity, name: entry.material }, pointer, '', faults);
  const impossible = purityFault(`The purity of "${known.material}"`, purity, `${pointer}/purity`);
  if (impossible !== null) faults.push(impossible);
  return { ...known, name: known.material, purity, meltingTemperature: null };
}

/** Impurities stay in it. */
function expectedIngot(masses: readonly Mass[], lost: Readonly<Record<string, number>>): number {
  const metal = metalIn(masses);
  const charged = masses.reduce((grams, { mass }) => grams + mass, 0);
  return Object.entries(lost).reduce(
    (grams, [symbol, percent]) => grams - ((metal[symbol] ?? 0) * percent) / 100,
    charged,
  );
}

function observationFaults({ phases, methods }: MeltEntry): Fault[] {
  const faults: Fault[] = [];
  phases?.forEach((phase, at) => {
    if (phases.indexOf(phase) < at) faults.push(fault('melt/phase-twice', { phase }, `/phases/${at}`));
  });
  if (phases !== null && methods.length === 0) faults.push(fault('melt/method-missing', {}, '/methods'));
  return faults;
}

function lossFaults(loss: Readonly<Record<string, number>>, present: ReadonlySet<string>): Fault[] {
  return Object.entries(loss).flatMap(([symbol, percent]) => {
    const pointer = `/loss/${symbol.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    if (!present.has(symbol))
      return [fault('charge/not-in-alloy', { what: 'loss', symbol: symbol.slice(0, 20) }, pointer)];
    if (percent >= 0 && percent < 100) return [];
    const values = {
      place: `The loss of ${symbol}`,
      found: `${percent} %`,
      right: 'Give wt.% from 0 to below 100.',
    };
    return [fault('request/wrong-value', values, pointer)];
  });
}
