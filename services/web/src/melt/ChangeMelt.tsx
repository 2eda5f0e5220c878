import { hashKey, useMutation, useQueryClient } from '@tanstack/react-query';
import type { MeltEntry, MeltWithHistory } from '@tiegel/contract';
import { useRef, useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { isKept } from '../frame/useKept.ts';
import { request, ServerProblem } from '../server/request.ts';
import { beganFrom, type MeltVersion } from './beganFrom.ts';
import { Clashes } from './Clashes.tsx';
import { changesOnto, type Whose } from './changesOnto.ts';
import { inTheWay, MeltFormView } from './MeltFormView.tsx';
import { draftOfMelt, draftOnSheet, keepMeltDraft, placeOf } from './meltDraft.ts';
import { meltKey, meltQuery } from './meltQueries.ts';
import { refreshMelts } from './refreshMelts.ts';
import { useMeltForm } from './useMeltForm.ts';

/** The form of a melt that was recorded; earlier versions are kept, and two people at once lose nothing. */
export function ChangeMelt({ melt, onEnd }: { melt: MeltWithHistory; onEnd: () => void }) {
  const client = useQueryClient();
  // What the form began from: a newer version that is fetched meanwhile must not be overwritten unseen.
  const [base, setBase] = useState<MeltVersion>(() => beganFrom(melt));
  const [overtaken, setOvertaken] = useState(base.version < melt.version);
  const place = placeOf(base.id, base.version);
  const form = useMeltForm(place, () => draftOfMelt(base));
  const end = () => {
    for (const { version } of melt.history) keepMeltDraft(placeOf(melt.id, version), null);
    keepMeltDraft(place, null);
    onEnd();
  };
  // What was sent and had no answer: should the server have it all the same, it is nobody else's.
  const unanswered = useRef<MeltEntry[]>([]);
  const clashesPlace = (newest: MeltVersion) => `melt.clashes.${base.id}.${base.version}.${newest.version}`;
  // Theirs, as soon as it was asked what clashes with it: a reload goes on there.
  const [theirs, setTheirs] = useState(() => (isKept(clashesPlace(melt)) ? melt : null));
  const changing = useMutation({
    mutationFn: () => {
      const before = unanswered.current;
      unanswered.current = [...before, form.written.entry];
      return send(base, form.written.entry, before);
    },
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: meltKey(melt.id) });
      void refreshMelts(client);
      end();
    },
  });
  const taking = useMutation({
    mutationFn: () => client.fetchQuery(meltQuery(melt.id)),
    onSuccess: (newest) => take(newest),
  });
  const onto = (newest: MeltWithHistory, chosen: Record<string, Whose> = {}) => {
    const began = (one: MeltEntry) => draftOnSheet(one, form.sheet);
    return changesOnto(began(newest), form.draft, began(base), chosen);
  };
  const take = (newest: MeltWithHistory, chosen: Record<string, Whose> = {}) => {
    const { draft, clashes } = onto(newest, chosen);
    if (clashes.length > 0) return setTheirs(newest);
    setTheirs(null);
    form.change(draft);
    keepMeltDraft(place, null);
    setBase(newest);
    setOvertaken(false);
    changing.reset();
  };
  const clashes = theirs === null ? [] : onto(theirs).clashes;
  const way = inTheWay(form);
  const disabled = way !== '' || changing.isPending;
  return (
    <div className="column">
      <h1>Change {melt.name === '' ? 'the melt' : `“${melt.name}”`}</h1>
      <MeltFormView form={form}>
        <p className="row">
          <button
            type="button"
            className="button-main"
            aria-disabled={disabled}
            onClick={() => (form.isSendable ? disabled || changing.mutate() : form.tell())}
          >
            {changing.isPending ? 'Saving …' : 'Save the changes'}
          </button>
          <button type="button" onClick={end}>
            Leave it as it was
          </button>
          <span role="status">{way}</span>
        </p>
        {overtaken || isOvertaken(changing.error) ? (
          <div className="note note-danger" role="alert">
            <p>
              Somebody else changed this melt while you did. Nothing of yours was saved, and all of it is kept
              in this browser.
            </p>
            {theirs !== null && clashes.length > 0 ? (
              <Clashes
                key={theirs.version}
                place={clashesPlace(theirs)}
                clashes={clashes}
                onChosen={(chosen) => take(theirs, chosen)}
              />
            ) : (
              <p>
                <button type="button" onClick={() => taking.mutate()}>
                  Bring your changes onto theirs
                </button>{' '}
                Where both changed the same, you choose.
              </p>
            )}
          </div>
        ) : (
          <FaultList
            error={changing.error}
            what="Nothing was changed; what you entered is kept in this browser."
            unsure="Whether it was changed is not known; what you entered is kept in this browser. Save it again when the server answers."
          />
        )}
        <FaultList
          error={taking.error}
          what="Nothing was changed; what you entered is kept in this browser."
        />
      </MeltFormView>
    </div>
  );
}

const isOvertaken = (error: unknown): boolean => error instanceof ServerProblem && error.status === 409;

/**
 * Sends a change. One whose answer was lost is newer than what it began from, and is not somebody else's:
 * what is sent now goes onto it.
 * @param unanswered what was sent before from the same version, without an answer
 */
async function send(
  { id, version }: MeltVersion,
  entry: MeltEntry,
  unanswered: readonly MeltEntry[],
): Promise<void> {
  const address = `/melts/${encodeURIComponent(id)}`;
  const put = (onto: number) =>
    request(address, { method: 'PUT', body: JSON.stringify({ ...entry, version: onto }) });
  try {
    await put(version);
  } catch (error) {
    if (!isOvertaken(error)) throw error;
    const { history } = await request<MeltWithHistory>(address);
    const own = history.find((one) => one.version === version + 1)?.entry;
    const isOwn = (one: MeltEntry) => own !== undefined && hashKey([own]) === hashKey([one]);
    if (isOwn(entry)) return;
    if (!unanswered.some(isOwn)) throw error;
    await put(version + 1);
  }
}
