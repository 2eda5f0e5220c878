import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import '../charge/charge.css';
import { FaultList } from '../frame/FaultList.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { inTheWay, MeltFormView } from '../melt/MeltFormView.tsx';
import '../melt/melt.css';
import { emptyDraft, keepMeltDraft, placeOf } from '../melt/meltDraft.ts';
import type { MeltView } from '../melt/meltQueries.ts';
import { useMeltForm } from '../melt/useMeltForm.ts';
import { randomKey } from '../server/randomKey.ts';
import { post } from '../server/request.ts';

/** Records a melt: what was weighed, how it was melted, what was seen. */
export function NewMeltPage() {
  useTitle('Record a melt');
  const [address] = useSearchParams();
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const asked = address.get('charge') ?? '';
  const place = placeOf(null, null);
  const form = useMeltForm(place, emptyDraft);
  const sent = useRef({ text: '', key: '' });
  const { change } = form;

  useEffect(() => {
    if (asked !== '') change({ charge: asked });
  }, [asked, change]);

  const recording = useMutation({
    mutationFn: () => {
      const text = JSON.stringify(form.written.entry);
      if (sent.current.text !== text) sent.current = { text, key: randomKey() };
      return post<MeltView>('/melts', form.written.entry, {
        headers: { 'idempotency-key': sent.current.key },
      });
    },
    onSuccess: async ({ id }) => {
      keepMeltDraft(place, null);
      await client.invalidateQueries({ queryKey: ['melts'] });
      void client.invalidateQueries({ queryKey: ['evidence'] });
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
        />
      </MeltFormView>
    </div>
  );
}
