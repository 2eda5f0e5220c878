import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import {
  atomicToWeightPercent,
  compositionOf,
  elementOf,
  isAvailable,
  parseAlloy,
  symbols,
} from '@tiegel/elements';
import { purityFault, wrong } from './chargeRequest.ts';
import type { Material } from './material.ts';
import { materialName } from './materialName.ts';

/** What the amounts of a master alloy count. */
export const amountKinds = ['at.%', 'wt.%'] as const;
export type AmountKind = (typeof amountKinds)[number];

/** A material as a person writes it down. */
export interface MaterialEntry {
  /** begins with the symbol of an element that is in it: 'Mn flakes', 'FeNb66' */
  name: string;
  /** an alloy, or amounts by symbol; left out: the element that the name begins with */
  contains?: string | Readonly<Record<string, number>> | null;
  /** of what the amounts of a master alloy are; needed there */
  amounts?: AmountKind | null;
  /** wt.%, 100 where left out */
  purity?: number | null;
  /** currency per kg */
  price?: number | null;
  /** K */
  meltingTemperature?: number | null;
}

const longestName = 60;
const highestPrice = 1e9;
const hottest = 5000;

/**
 * The material that an entry describes, or null where something is wrong with it, which joins `faults`.
 * @param where is put behind its name in texts: ' on line 3'
 */
export function materialOf(
  entry: MaterialEntry,
  pointer: string,
  where: string,
  faults: Fault[],
): Material | null {
  const before = faults.length;
  const name = materialName(entry.name);
  const called = `"${name.slice(0, longestName)}"${where}`;
  const first = /^([A-Z][a-z]?)(?![a-z])/.exec(name)?.[1] ?? '';
  const contains = contentsOf(entry, first, pointer, where, faults);
  // Contents that cannot be read are a fault of their own: what the name begins with may be in them.
  if (name === '') {
    const right = 'Begin with a symbol, as in "Mn flakes" or "FeNb66".';
    faults.push(
      fault('request/missing-key', { place: `The name of the material${where}`, right }, `${pointer}/name`),
    );
  } else if (/\p{Cc}/u.test(name) || (contains === null ? isPlain(entry) : !(first in contains))) {
    const meant = isPlain(entry) ? symbolMeant(name) : '';
    faults.push(fault('materials/name', { name: called, meant, limit: longestName }, `${pointer}/name`));
  }
  if (name.length > longestName) {
    const length = { size: name.length, of: 'characters', word: 'at most', bound: longestName };
    const values = { place: `The name ${called}`, ...length, right: 'Shorten it.' };
    faults.push(fault('request/length', values, `${pointer}/name`));
  }
  if (entry.amounts !== undefined && entry.amounts !== null) {
    if (!isAmountKind(entry.amounts)) faults.push(wrongAmounts(called, entry.amounts, pointer));
  } else if (contains !== null && Object.keys(contains).length > 1) {
    faults.push(fault('materials/amounts', { name: called }, `${pointer}/amounts`));
  }
  const purity = entry.purity ?? 100;
  const price = entry.price ?? null;
  const meltingTemperature = entry.meltingTemperature ?? null;
  faults.push(
    ...[
      purityFault(`The purity of ${called}`, purity, `${pointer}/purity`),
      price === null || (price >= 0 && price <= highestPrice)
        ? null
        : wrong(
            `The price of ${called}`,
            String(price),
            `Give a price per kg from 0 to ${highestPrice}, or none.`,
            `${pointer}/price`,
          ),
      meltingTemperature === null || (meltingTemperature > 0 && meltingTemperature <= hottest)
        ? null
        : wrong(
            `The melting temperature of ${called}`,
            String(meltingTemperature),
            `Give kelvin above 0 and at most ${hottest}, or none.`,
            `${pointer}/meltingTemperature`,
          ),
    ].filter((one) => one !== null),
  );
  if (faults.length > before || contains === null) return null;
  return { name, contains, purity, price, meltingTemperature };
}

/** Whether nothing is said of what is in it but its name. */
export const isPlain = ({ contains }: Pick<MaterialEntry, 'contains'>): boolean =>
  contains === undefined || contains === null || contains === '';

/** The symbol of the element whose name or symbol somebody wrote otherwise ('nickel', 'ni'); '' for none. */
function symbolMeant(name: string): string {
  const word = (/^\p{L}+/u.exec(name)?.[0] ?? '').toLowerCase();
  const found = symbols.find(
    (symbol) => symbol.toLowerCase() === word || elementOf(symbol)?.name.toLowerCase() === word,
  );
  return found ?? '';
}

/** A word that is none would be ignored where there is one element, and read as none at all where there are several. */
function wrongAmounts(called: string, found: string, pointer: string): Fault {
  const right = 'Write at.% or wt.%, or nothing where there is only one element in it.';
  const shown = `"${found.slice(0, longestName)}"`;
  return wrong(`The amounts of ${called}`, shown, right, `${pointer}/amounts`);
}

const isAmountKind = (kind: unknown): kind is AmountKind =>
  (amountKinds as readonly unknown[]).includes(kind);

/** wt.% by symbol, null where the contents cannot be read. */
function contentsOf(
  { contains, amounts }: MaterialEntry,
  first: string,
  pointer: string,
  where: string,
  faults: Fault[],
): Record<string, number> | null {
  if (contains === undefined || contains === null || contains === '') {
    return isAvailable(first) ? { [first]: 100 } : null;
  }
  const by = amounts === 'wt.%' ? 'weight' : 'atoms';
  const place = `${pointer}/contains`;
  try {
    const composition =
      typeof contains === 'string'
        ? parseAlloy(contains, { by, pointer: place })
        : compositionOf(contains, { by, pointer: place });
    return atomicToWeightPercent(composition);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    faults.push(
      ...error.faults.map((one) => ({
        ...one,
        detail: where === '' ? one.detail : `The material${where}: ${one.detail}`,
      })),
    );
    return null;
  }
}

/** Faults of names that stand twice among materials: sheets tell materials apart by name. */
export function repeatedNames(
  materials: readonly (Material | null)[],
  pointerOf: (at: number) => string,
): Fault[] {
  const seen = new Set<string>();
  return materials.flatMap((material, at) => {
    if (material === null) return [];
    if (seen.has(material.name)) return [fault('materials/repeated', { name: material.name }, pointerOf(at))];
    seen.add(material.name);
    return [];
  });
}
