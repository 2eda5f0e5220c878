import {
  type Fault,
  fault,
  faultsOf,
  type MeltEntry,
  meltEntrySchema,
  meltRecordSchema,
  ProblemError,
} from '@tiegel/contract';
import type { MeltView } from '@tiegel/search/laboratory';
import { z } from 'zod';
import { readJson } from './readJson.ts';

/** A melt as it should stand, and the version that it was made from where the file says so. */
export interface ChangedMelt {
  entry: MeltEntry;
  version: number | null;
}

/** What `melt show --json` tells beside what was written down. A list of the types, so that none is forgotten. */
const toldBeside: Record<Exclude<keyof MeltView, keyof MeltEntry | 'version'> | 'history', true> = {
  ...{
    id: true,
    createdAt: true,
    changedAt: true,
    deletedAt: true,
    doubts: true,
    history: true,
    attachments: true,
  },
  ...{ composition: true, nominal: true, system: true, label: true, phaseClass: true, singlePhase: true },
};

const changeSchema = meltEntrySchema.extend({
  version: z
    .int()
    .min(1)
    .describe('Write the version that you change, as "melt show" tells it, or leave it out.')
    .exactOptional(),
});

/**
 * A melt of a file to be recorded; what it leaves out was not measured or not done.
 * @throws ProblemError with all that is wrong, and those of readJson
 */
export function readMelt(file: string): MeltEntry {
  const sent = readJson(file);
  refuse(faultsOf(meltRecordSchema, sent));
  return meltRecordSchema.parse(sent);
}

/**
 * The whole of a melt that takes the place of what stands, also as `melt show --json` prints it.
 * @throws ProblemError with all that is wrong, request/wrong-value where the file is of another melt, and those of readJson
 */
export function readChangedMelt(file: string, id: string): ChangedMelt {
  const sent = withoutTold(readJson(file), id);
  refuse(faultsOf(changeSchema, sent));
  const { version = null, ...entry } = changeSchema.parse(sent);
  return { entry, version };
}

function withoutTold(sent: unknown, id: string): unknown {
  if (typeof sent !== 'object' || sent === null || Array.isArray(sent)) return sent;
  if ('id' in sent && sent.id !== id) {
    const values = { place: 'id', found: `"${sent.id}"`, right: `Give the file of the melt ${id}.` };
    refuse([fault('request/wrong-value', values, '/id')]);
  }
  return Object.fromEntries(Object.entries(sent).filter(([key]) => !Object.hasOwn(toldBeside, key)));
}

function refuse(faults: readonly Fault[]): void {
  if (faults.length > 0) throw new ProblemError([...faults]);
}
