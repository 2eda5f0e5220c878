import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Attachment, MeltView } from '@tiegel/contract';
import { type ChangeEvent, useRef, useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';
import { apiRoot, request } from '../server/request.ts';
import { meltKey } from './meltQueries.ts';

const largestMegabytes = 20;

/** Pictures and measurements of a melt. */
export function Attachments({ melt }: { melt: MeltView }) {
  const client = useQueryClient();
  const file = useRef<HTMLInputElement>(null);
  const [removed, setRemoved] = useState<Attachment | null>(null);
  const place = `/melts/${melt.id}/attachments`;
  const refresh = () => client.invalidateQueries({ queryKey: meltKey(melt.id) });
  const add = useMutation({
    mutationFn: async (one: File) => {
      if (one.size > largestMegabytes * 1e6)
        throw new Error(
          `“${one.name}” has ${formatNumber(one.size / 1e6, 1)} MB; at most ${largestMegabytes} MB are kept. Make the picture smaller or save it as JPEG, or attach the measurement in parts.`,
        );
      if (one.size === 0)
        throw new Error(`“${one.name}” is empty. See that it was saved whole, and choose it again.`);
      return request<Attachment>(`${place}?name=${encodeURIComponent(one.name)}`, {
        method: 'POST',
        body: one,
        type: 'application/octet-stream',
      });
    },
    onSuccess: refresh,
  });
  const remove = useMutation({
    mutationFn: (one: Attachment) => request(`${place}/${one.id}`, { method: 'DELETE' }),
    onSuccess: (_, one) => {
      setRemoved(one);
      return refresh();
    },
  });
  const restore = useMutation({
    mutationFn: (one: Attachment) => request(`${place}/${one.id}/restore`, { method: 'POST' }),
    onSuccess: () => {
      setRemoved(null);
      return refresh();
    },
  });
  const onFile = (event: ChangeEvent<HTMLInputElement>) => {
    const [one] = event.target.files ?? [];
    if (one) add.mutate(one);
    event.target.value = '';
  };
  return (
    <section
      aria-labelledby="attachments-head"
      className={melt.attachments.length === 0 ? 'screen-only' : undefined}
    >
      <h2 id="attachments-head">Pictures and measurements</h2>
      <ul className="melt-files">
        {melt.attachments.map((one) => (
          <li key={one.id}>
            {one.type === 'image/tiff' || !one.type.startsWith('image/') ? null : (
              <img src={`${apiRoot}${place}/${one.id}`} alt={one.name} loading="lazy" />
            )}
            <span className="row">
              <a href={`${apiRoot}${place}/${one.id}`}>{one.name}</a>
              <span className="quiet small">{kilobytes(one.size)}</span>
              <button type="button" className="button-plain screen-only" onClick={() => remove.mutate(one)}>
                Remove<span className="unseen"> {one.name}</span>
              </button>
            </span>
          </li>
        ))}
      </ul>
      {melt.attachments.length === 0 ? <p className="quiet">Nothing is attached yet.</p> : null}
      {removed ? (
        <p className="note row" role="status">
          “{removed.name}” was taken away.
          <button type="button" onClick={() => restore.mutate(removed)}>
            Bring it back
          </button>
        </p>
      ) : null}
      <p className="row screen-only">
        <button
          type="button"
          aria-disabled={add.isPending}
          onClick={() => add.isPending || file.current?.click()}
        >
          {add.isPending ? 'Attaching …' : 'Attach a file …'}
        </button>
        <input ref={file} type="file" aria-label="File to attach" onChange={onFile} hidden />
        <span className="quiet small">
          A picture, a PDF, or the text of a diffraction pattern, up to {largestMegabytes} MB.
        </span>
      </p>
      <FaultList error={add.error} what="The file was not attached; what is attached already is kept." />
      <FaultList error={remove.error ?? restore.error} what="Nothing was changed." />
    </section>
  );
}

function kilobytes(bytes: number): string {
  return bytes < 1e6
    ? `${formatNumber(Math.ceil(bytes / 1000), 0)} kB`
    : `${formatNumber(bytes / 1e6, 1)} MB`;
}
