import type { MeltEntry, MeltWithHistory } from '@tiegel/contract';
import { draftOfMelt, keptMeltDraft, type MeltDraft, placeOf } from './meltDraft.ts';

/** A version of a melt that a form began from. */
export type MeltVersion = MeltEntry & { id: string; version: number };

/**
 * The version that a form goes on from: an earlier one where changes of it are kept in this browser, which
 * somebody else's version overtook meanwhile, else the newest. Changes that the newest has already are none.
 */
export function beganFrom(melt: MeltWithHistory): MeltVersion {
  const { id, history } = melt;
  const overtaken = history.find(({ version, entry }) => {
    const kept = keptMeltDraft(placeOf(id, version));
    return kept !== null && differs(kept, entry) && differs(kept, melt);
  });
  return overtaken ? { ...overtaken.entry, id, version: overtaken.version } : melt;
}

/** Rows of a charge sheet that nobody weighed stand in a form without being a change. */
const differs = (draft: MeltDraft, entry: MeltEntry): boolean =>
  JSON.stringify(weighedOnly(draft)) !== JSON.stringify(weighedOnly(draftOfMelt(entry)));

const weighedOnly = ({ weighed, ...others }: MeltDraft) => [
  Object.entries(others).sort(([one], [other]) => (one < other ? -1 : 1)),
  weighed.filter(({ mass }) => mass.trim() !== '').map(Object.entries),
];
