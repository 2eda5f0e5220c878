import type { MeltEntry } from '@tiegel/contract';
import { wrapped } from './inWords.ts';

/** A version of a melt, as its history holds it. */
export interface MeltVersion {
  version: number;
  at: string;
  by: string | null;
  entry: MeltEntry;
}

/** Every version of a melt for reading, the newest first, and what each changed. */
export function* meltHistoryText(history: readonly MeltVersion[]): Generator<string> {
  for (const [place, { version, at, by, entry }] of history.entries()) {
    yield `${wrapped(`version ${version}, ${at}${by === null ? '' : `, ${by}`}: ${changesIn(entry, history[place + 1]?.entry)}`)}\n`;
  }
}

/** By the keys of the file, so that whoever reads it knows what to write. */
function changesIn(entry: MeltEntry, before: MeltEntry | undefined): string {
  if (before === undefined) return 'recorded';
  const keys = [...new Set([...Object.keys(before), ...Object.keys(entry)])] as (keyof MeltEntry)[];
  const changed = keys.filter((key) => JSON.stringify(entry[key]) !== JSON.stringify(before[key]));
  if (changed.length === 0) return 'nothing changed';
  return changed.map((key) => `${key} ${inWords(before[key])} → ${inWords(entry[key])}`).join('; ');
}

function inWords(value: unknown): string {
  if (value === null || value === undefined || value === '') return 'nothing';
  if (Array.isArray(value)) {
    if (value.length === 0) return 'nothing';
    return value
      .map((one) => (typeof one === 'object' ? `${one.material} ${one.mass} g` : String(one)))
      .join(', ');
  }
  if (typeof value !== 'object') return String(value);
  return Object.entries(value)
    .map(([key, one]) => `${key} ${one}`)
    .join(', ');
}
