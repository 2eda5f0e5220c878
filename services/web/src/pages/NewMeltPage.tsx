import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import '../charge/charge.css';
import { FaultList } from '../frame/FaultList.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { inTheWay, MeltFormView } from '../melt/MeltFormView.tsx';
import '../melt/melt.css';
import { emptyDraft, keepMeltDraft, placeOf } from '../melt/meltDraft.ts';
import type { MeltView } from '../melt/meltQueries.ts';
import { refreshMelts } from '../melt/refreshMelts.ts';
import { useMeltForm } from '../melt/useMeltForm.ts';
import { post } from '../server/request.ts';
import { forgetSent, sentKey } from '../server/sentKey.ts';

/** Records a melt: what was weighed, how it was melted, what was seen. */
export function NewMeltPage() {
  useTitle('Record a melt');
  const [address] = useSearchParams();
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const asked = address.get('charge') ?? '';
  const place = placeOf(null, null);
  const form = useMeltForm(place, emptyDraft);
  const { change } = form;

  useEffect(() => {
    if (asked !== '') change({ charge: asked });
  }, [asked, change]);

  const recording = useMutation({
    mutationFn: () => {
      const { entry } = form.written;
      const key = sentKey('localStorage', 'melt', JSON.stringify(entry));
      return post<MeltView>('/melts', entry, { headers: { 'idempotency-key': key } });
    },
    onSuccess: async ({ id }) => {
      forgetSent('localStorage', 'melt');
      keepMeltDraft(place, null);
      await refreshMelts(client);
      navigate(`/melts/${id}`);
    },
  });
  const way = inTheWay(form);
  const disabled = way !== '' || recording.isPending;
  return (
    <div className="column">
      <h1>Record a melt</h1>
      <MeltFormView form={form}>
        <p className="row">
          <button
            type="button"
            className="button-main"
            aria-disabled={disabled}
            onClick={() => disabled || recording.mutate()}
          >
            {recording.isPending ? 'Recording …' : 'Record the melt'}
          </button>
          <span role="status">{way}</span>
        </p>
        <FaultList
          error={recording.error}
          what="Nothing was recorded; what you entered is kept in this browser."
          unsure="Whether it was recorded is not known; what you entered is kept in this browser. Record it again when the server answers: it is recorded once."
        />
      </MeltFormView>
    </div>
  );
}
