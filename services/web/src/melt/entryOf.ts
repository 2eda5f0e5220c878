import { type ChargeSheet, type Melt, meltDoubts, meltOf } from '@tiegel/charge';
import type { MeltEntry } from '@tiegel/contract';
import {
  type Fault,
  longestMeltLine,
  longestMeltNotes,
  meltMost,
  mostWeighed,
  ProblemError,
} from '@tiegel/contract/terms';
import { valueFor } from '@tiegel/screening';
import type { PlacedFaults } from '../ask/faults/placeFaults.ts';
import { inLocale } from '../numbers/inLocale.ts';
import { parseNumber } from '../numbers/parseNumber.ts';
import type { MeltDraft, WeighedRow } from './meltDraft.ts';

/** A form as it would be sent, and the composition that follows: null while the masses do not give one. */
export interface Written {
  entry: MeltEntry;
  melt: Melt | null;
  faults: PlacedFaults;
  /** faults that are only that nothing was written yet: no news to whoever has not come to that field */
  lacking: ReadonlySet<string>;
  /** what is probably a slip, by field; a row as a whole is its field */
  doubts: PlacedFaults;
}

/** What is doubtful at a field, in words; '' for nothing. */
export const doubtsAt = ({ doubts }: Written, pointer: string): string =>
  doubts.get(pointer)?.join(' ') ?? '';

/** Reads the form. @param sheet its charge sheet, null without one or while it is not known */
export function entryOf(draft: MeltDraft, sheet: ChargeSheet | null): Written {
  const placed = new Map<string, string[]>();
  const lacking = new Set<string>();
  const add = (pointer: string, text: string) => placed.set(pointer, [...(placed.get(pointer) ?? []), text]);
  const number = (pointer: string, text: string, most?: number): number | null => {
    const parsed = parseNumber(text);
    if ('unclear' in parsed) add(pointer, parsed.unclear);
    const value = 'value' in parsed ? parsed.value : null;
    if (value !== null && most !== undefined && !(value > 0 && value <= most))
      add(pointer, `${text.trim()} is not possible here. Write a number above 0 and at most ${most}.`);
    return value;
  };
  const needed = (
    pointer: string,
    text: string,
    { most, right }: { most: number; right: string },
  ): number => {
    const value = number(pointer, text, most);
    if (value === null && !placed.has(pointer)) {
      add(pointer, right);
      lacking.add(pointer);
    }
    return value ?? Number.NaN;
  };
  const short = (pointer: string, text: string, longest = longestMeltLine) => {
    if (text.length > longest)
      add(pointer, `This has ${text.length} characters; at most ${longest} are kept. Shorten it.`);
    return text;
  };

  // Rows that were not filled in are not sent; pointers of what is sent are brought back to their rows.
  const rows = draft.weighed.flatMap((row, at) =>
    row.material.trim() === '' && row.mass.trim() === '' ? [] : [{ row, at }],
  );
  if (rows.length === 0) {
    add('/weighed', 'Write what was weighed: at least one material with its mass.');
    lacking.add('/weighed');
  }
  if (rows.length > mostWeighed) {
    const many = `These are ${rows.length} materials; at most ${mostWeighed} are kept.`;
    add('/weighed', `${many} Add up those that are alike.`);
  }
  const weighed = rows.map(({ row, at }) => ({
    material: row.material.trim(),
    mass: needed(`/weighed/${at}/mass`, row.mass, {
      most: meltMost.mass,
      right: 'Write what the balance showed, in grams.',
    }),
    ...describedBy(row, number(`/weighed/${at}/purity`, row.purity)),
  }));
  if (draft.date === '') add('/date', 'Write the day on which it was melted.');
  const entry: MeltEntry = {
    ...{ name: short('/name', draft.name.trim()), date: draft.date },
    ...{ charge: short('/charge', draft.charge.trim()) || null, weighed },
    ...(draft.loss === undefined ? {} : { loss: draft.loss }),
    ...{ ingot: number('/ingot', draft.ingot, meltMost.ingot), process: draft.process },
    anneal: draft.annealed
      ? {
          temperature: needed('/anneal/temperature', draft.annealTemperature, {
            most: meltMost.temperature,
            right: 'Write the temperature in kelvin.',
          }),
          hours: needed('/anneal/hours', draft.annealHours, {
            most: meltMost.hours,
            right: 'Write how many hours.',
          }),
          cooling: draft.cooling,
        }
      : null,
    phases: draft.phases.length === 0 ? null : draft.phases,
    methods: draft.methods,
    hardness: number('/hardness', draft.hardness, meltMost.hardness),
    density: number('/density', draft.density, meltMost.density),
    notes: short('/notes', draft.notes, longestMeltNotes),
  };
  const weighable = ![...placed.keys()].some((pointer) => pointer.startsWith('/weighed'));
  for (const { pointer, detail, remedy } of weighable ? meltFaults(entry, sheet) : []) {
    const [, key, index, field] = pointer.split('/');
    const row = key === 'weighed' ? rows[Number(index)]?.at : undefined;
    const shown = field === 'name' ? 'material' : field === 'amounts' ? 'contains' : field;
    const place = row === undefined ? pointer : `/weighed/${row}/${shown}`;
    if (row !== undefined && shown === 'material' && draft.weighed[row]!.material.trim() === '')
      lacking.add(place);
    add(place, `${detail} ${remedy}`);
  }
  const melt = weighable ? asWeighed(entry, sheet) : null;
  const density = melt && entry.density !== null ? valueFor('density', melt.composition) : null;
  const doubts = new Map<string, string[]>();
  for (const { pointer, text } of meltDoubts(entry, sheet, { melt, density })) {
    const [, key, index] = pointer.split('/');
    const place = key === 'weighed' && index !== undefined ? `/weighed/${rows[Number(index)]!.at}` : pointer;
    if (!placed.has(place)) doubts.set(place, [...(doubts.get(place) ?? []), inLocale(text)]);
  }
  return { entry, melt, faults: placed, lacking, doubts };
}

function meltFaults(entry: MeltEntry, sheet: ChargeSheet | null): readonly Fault[] {
  try {
    meltOf(entry, sheet);
    return [];
  } catch (error) {
    if (error instanceof ProblemError) return error.faults;
    throw error;
  }
}

/** What was weighed, whatever is still wrong with what was seen. */
function asWeighed(entry: MeltEntry, sheet: ChargeSheet | null): Melt | null {
  const unseen = { ...entry, phases: null, methods: [] };
  return meltFaults(unseen, sheet).length === 0 ? meltOf(unseen, sheet) : null;
}

/** What a row says is in its material; nothing where it leaves that to the charge sheet. */
function describedBy({ contains, amounts }: WeighedRow, purity: number | null) {
  return {
    ...(contains.trim() === '' ? {} : { contains: contains.trim(), amounts }),
    ...(purity === null ? {} : { purity }),
  };
}

/** Whether a row leaves it to the charge sheet what is in its material. */
export function isAsOnSheet({ material, contains, purity }: WeighedRow, sheet: ChargeSheet | null): boolean {
  if (contains.trim() !== '' || purity.trim() !== '') return false;
  return sheet?.lines.some((line) => line.material === material.trim()) ?? false;
}
