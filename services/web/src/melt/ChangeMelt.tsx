import { useMutation, useQueryClient } from '@tanstack/react-query';
import { FaultList } from '../frame/FaultList.tsx';
import { request, ServerProblem } from '../server/request.ts';
import { inTheWay, MeltFormView } from './MeltFormView.tsx';
import { draftOfMelt, keepMeltDraft, placeOf } from './meltDraft.ts';
import { type MeltWithHistory, meltKey } from './meltQueries.ts';
import { useMeltForm } from './useMeltForm.ts';

/** The form of a melt that was recorded; earlier versions are kept, and two people at once lose nothing. */
export function ChangeMelt({ melt, onEnd }: { melt: MeltWithHistory; onEnd: () => void }) {
  const client = useQueryClient();
  const place = placeOf(melt.id, melt.version);
  const form = useMeltForm(place, () => draftOfMelt(melt));
  const end = () => {
    keepMeltDraft(place, null);
    onEnd();
  };
  const changing = useMutation({
    mutationFn: () =>
      request(`/melts/${encodeURIComponent(melt.id)}`, {
        method: 'PUT',
        body: JSON.stringify({ ...form.written.entry, version: melt.version }),
      }),
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: meltKey(melt.id) });
      void client.invalidateQueries({ queryKey: ['melts'] });
      void client.invalidateQueries({ queryKey: ['evidence'] });
      end();
    },
  });
  const way = inTheWay(form);
  const disabled = way !== '' || changing.isPending;
  const overtaken = changing.error instanceof ServerProblem && changing.error.status === 409;
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
        <FaultList
          error={changing.error}
          what={
            overtaken
              ? 'Somebody else changed this melt while you did; what you entered is kept in this browser. Reload the page in another tab to see theirs, then enter yours again.'
              : 'Nothing was changed; what you entered is kept in this browser.'
          }
        />
      </MeltFormView>
    </div>
  );
}
