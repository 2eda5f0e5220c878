import type { ChargeSheet } from '@tiegel/charge';
import type { MeltEntry, ObservablePhase, observationMethods } from '@tiegel/contract';
import { entryText } from '../numbers/parseNumber.ts';

/** A material that was weighed, as it was typed. */
export interface WeighedRow {
  material: string;
  mass: string;
  /** what is in it, where no charge sheet says so, or another lot was weighed */
  contains: string;
  amounts: 'wt.%' | 'at.%';
  purity: string;
}

/** The form of a melt: texts, not numbers, so that '152,' stays what somebody is typing. */
export interface MeltDraft {
  name: string;
  date: string;
  charge: string;
  weighed: WeighedRow[];
  /** wt.% that evaporated, where a melt says it itself: kept as it is, for the form has no field for it */
  loss?: Record<string, number>;
  ingot: string;
  process: MeltEntry['process'];
  annealed: boolean;
  annealTemperature: string;
  annealHours: string;
  cooling: NonNullable<MeltEntry['anneal']>['cooling'];
  phases: ObservablePhase[];
  methods: (typeof observationMethods)[number][];
  hardness: string;
  density: string;
  notes: string;
}

export const emptyRow: WeighedRow = { material: '', mass: '', contains: '', amounts: 'wt.%', purity: '' };

/** Today, in the reader's own calendar. */
export function today(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

export function emptyDraft(): MeltDraft {
  return {
    ...{ name: '', date: today(), charge: '', weighed: [emptyRow], ingot: '', process: 'arc melting' },
    ...{ annealed: false, annealTemperature: '', annealHours: '', cooling: 'furnace' },
    ...{ phases: [], methods: [], hardness: '', density: '', notes: '' },
  };
}

/** The form of a melt that was recorded, to change it. */
export function draftOfMelt(entry: MeltEntry): MeltDraft {
  const { anneal } = entry;
  return {
    ...emptyDraft(),
    name: entry.name,
    date: entry.date,
    charge: entry.charge ?? '',
    weighed: entry.weighed.map(({ material, mass, contains, amounts, purity }) => ({
      material,
      mass: entryText(mass),
      contains: typeof contains === 'string' ? contains : writtenAlloy(contains ?? {}),
      amounts: amounts ?? 'wt.%',
      purity: entryText(purity ?? undefined),
    })),
    ...(entry.loss === undefined ? {} : { loss: entry.loss }),
    ingot: entryText(entry.ingot ?? undefined),
    process: entry.process,
    annealed: anneal !== null,
    annealTemperature: entryText(anneal?.temperature),
    annealHours: entryText(anneal?.hours),
    cooling: anneal?.cooling ?? 'furnace',
    phases: [...(entry.phases ?? [])],
    methods: [...entry.methods],
    hardness: entryText(entry.hardness ?? undefined),
    density: entryText(entry.density ?? undefined),
    notes: entry.notes,
  };
}

/** The form of a melt with the rows of its charge sheet: what a form begins from as soon as the sheet is known. */
export function draftOnSheet(entry: MeltEntry, sheet: ChargeSheet | null): MeltDraft {
  const draft = draftOfMelt(entry);
  return sheet === null ? draft : { ...draft, weighed: rowsOfSheet(sheet, draft.weighed) };
}

const writtenAlloy = (amounts: Readonly<Record<string, number>>): string =>
  Object.entries(amounts).flat().join('');

/** The rows of a charge sheet, with what was weighed of the same materials before. */
export function rowsOfSheet(sheet: ChargeSheet, before: readonly WeighedRow[]): WeighedRow[] {
  const rows = sheet.order.map((material) => ({
    ...(before.find((row) => row.material === material) ?? emptyRow),
    material,
  }));
  const others = before.filter(({ material, mass }) => mass.trim() !== '' && !sheet.order.includes(material));
  return [...rows, ...others];
}

/** Where a form that is not sent yet is kept in this browser: a new melt, or changes of a version. */
export const placeOf = (id: string | null, version: number | null): string =>
  id === null ? 'tiegel.melt.new' : `tiegel.melt.${id}.${version}`;

export function keptMeltDraft(place: string): MeltDraft | null {
  try {
    const text = localStorage.getItem(place);
    return text === null ? null : { ...emptyDraft(), ...(JSON.parse(text) as MeltDraft) };
  } catch {
    return null;
  }
}

export function keepMeltDraft(place: string, draft: MeltDraft | null): void {
  try {
    if (draft === null) localStorage.removeItem(place);
    else localStorage.setItem(place, JSON.stringify(draft));
  } catch {
    // A browser that refuses storage only loses the form on a reload.
  }
}
