import { hashKey, useMutation, useQueryClient } from '@tanstack/react-query';
import type { MeltEntry } from '@tiegel/contract';
import { useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { request, ServerProblem } from '../server/request.ts';
import { inTheWay, MeltFormView } from './MeltFormView.tsx';
import { changesOnto, draftOfMelt, draftOnSheet, keepMeltDraft, placeOf } from './meltDraft.ts';
import { type MeltWithHistory, meltKey, meltQuery } from './meltQueries.ts';
import { refreshMelts } from './refreshMelts.ts';
import { useMeltForm } from './useMeltForm.ts';

/** The form of a melt that was recorded; earlier versions are kept, and two people at once lose nothing. */
export function ChangeMelt({ melt, onEnd }: { melt: MeltWithHistory; onEnd: () => void }) {
  const client = useQueryClient();
  // What the form began from: a newer version that is fetched meanwhile must not be overwritten unseen.
  const [base, setBase] = useState(melt);
  const place = placeOf(base.id, base.version);
  const form = useMeltForm(place, () => draftOfMelt(base));
  const end = () => {
    keepMeltDraft(place, null);
    onEnd();
  };
  const changing = useMutation({
    mutationFn: () => send(base, form.written.entry),
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: meltKey(melt.id) });
      void refreshMelts(client);
      end();
    },
  });
  const taking = useMutation({
    mutationFn: () => client.fetchQuery(meltQuery(melt.id)),
    onSuccess: (newest) => {
      const began = (one: MeltEntry) => draftOnSheet(one, form.sheet);
      form.change(changesOnto(began(newest), form.draft, began(base)));
      keepMeltDraft(place, null);
      setBase(newest);
      changing.reset();
    },
  });
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
            onClick={() => disabled || changing.mutate()}
          >
            {changing.isPending ? 'Saving …' : 'Save the changes'}
          </button>
          <button type="button" onClick={end}>
            Leave it as it was
          </button>
          <span role="status">{way}</span>
        </p>
        {isOvertaken(changing.error) ? (
          <div className="note note-danger" role="alert">
            <p>
              Somebody else changed this melt while you did. Nothing of yours was saved, and all of it is kept
              in this browser.
            </p>
            <p>
              <button type="button" onClick={() => taking.mutate()}>
                Bring your changes onto theirs
              </button>{' '}
              Where both changed the same, yours then stands, and theirs in the history.
            </p>
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

/** Sends a change. One whose answer was lost is newer than what it began from, and is not somebody else's. */
async function send({ id, version }: MeltWithHistory, entry: MeltEntry): Promise<void> {
  const address = `/melts/${encodeURIComponent(id)}`;
  try {
    await request(address, { method: 'PUT', body: JSON.stringify({ ...entry, version }) });
  } catch (error) {
    if (!isOvertaken(error)) throw error;
    const { history } = await request<MeltWithHistory>(address);
    const next = history.find((one) => one.version === version + 1);
    if (next === undefined || hashKey([next.entry]) !== hashKey([entry])) throw error;
  }
}
