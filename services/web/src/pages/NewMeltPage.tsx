import { useEffect } from 'react';
import { useSearchParams } from 'wouter';
import '../charge/charge.css';
import { FaultList } from '../frame/FaultList.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { inTheWay, MeltFormView } from '../melt/MeltFormView.tsx';
import '../melt/melt.css';
import { emptyDraft, placeOf } from '../melt/meltDraft.ts';
import { RecordedBefore } from '../melt/RecordedBefore.tsx';
import { useMeltForm } from '../melt/useMeltForm.ts';
import { useRecordMelt } from '../melt/useRecordMelt.ts';

/** Records a melt: what was weighed, how it was melted, what was seen. */
export function NewMeltPage() {
  useTitle('Record a melt');
  const [address] = useSearchParams();
  const asked = address.get('charge') ?? '';
  const place = placeOf(null, null);
  const form = useMeltForm(place, emptyDraft);
  const { change } = form;

  useEffect(() => {
    if (asked !== '') change({ charge: asked });
  }, [asked, change]);

  const record = useRecordMelt(place, form.written.entry);
  const { recording, before } = record;
  const way = inTheWay(form);
  const disabled = way !== '' || recording.isPending || before !== null;
  return (
    <div className="column">
      <h1>Record a melt</h1>
      <MeltFormView form={form}>
        <p className="row">
          <button
            type="button"
            className="button-main"
            aria-disabled={disabled}
            onClick={() => (form.isSendable ? disabled || recording.mutate() : form.tell())}
          >
            {recording.isPending ? 'Recording …' : 'Record the melt'}
          </button>
          <span role="status">{way}</span>
        </p>
        {form.isSendable ? <RecordedBefore record={record} /> : null}
        <FaultList
          error={recording.error}
          what="Nothing was recorded; what you entered is kept in this browser."
          unsure="Whether it was recorded is not known; what you entered is kept in this browser. Record it again when the server answers: it is recorded once."
        />
      </MeltFormView>
    </div>
  );
}
