import { decimalsOf } from '@tiegel/charge';
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { focusField } from '../ask/faults/faultsContext.ts';
import { NumberField } from '../ask/fields/NumberField.tsx';
import { TextField } from '../charge/TextField.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';
import { Doubt } from './Doubt.tsx';
import { doubtsAt, isAsOnSheet } from './entryOf.ts';
import type { MeltForm } from './useMeltForm.ts';

/** What the balance showed of each material: those of the charge sheet, and whatever was added to them. */
export function WeighedRows({ form }: { form: MeltForm }) {
  const { draft, sheet } = form;
  // Rows whose own fields were in use keep them, also emptied, or with the name of a material of the sheet on the way
  // to a longer one; another sheet has other rows.
  const [open, setOpen] = useState<readonly number[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the sheet is the reason
  useEffect(() => setOpen([]), [sheet]);
  const openRow = (at: number) => setOpen((before) => (before.includes(at) ? before : [...before, at]));
  const removeRow = (at: number) => {
    setOpen(open.filter((one) => one !== at).map((one) => (one > at ? one - 1 : one)));
    form.removeRow(at);
  };
  return (
    <div className="melt-rows">
      {draft.weighed.map((row, at) => {
        const line = sheet?.lines.find(({ material }) => material === row.material);
        const known = !open.includes(at) && isAsOnSheet(row, sheet);
        return (
          // A row is what it is by its place: its name may be changed while somebody types.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <fieldset key={at} className="melt-row" onFocus={() => (known ? undefined : openRow(at))}>
            <legend className="unseen">{known ? row.material : `Material ${at + 1}`}</legend>
            {known ? (
              <span className="melt-material">
                <b>{row.material}</b>{' '}
                <span className="quiet small">
                  to weigh {formatNumber(line?.mass, decimalsOf(sheet?.resolution ?? 1))} g
                </span>
              </span>
            ) : (
              <TextField
                pointer={`/weighed/${at}/material`}
                label="Material"
                placeholder="Ni shot"
                value={row.material}
                onChange={(material) => form.changeRow(at, { material })}
              />
            )}
            <NumberField
              pointer={`/weighed/${at}/mass`}
              label={known ? `${row.material}: weighed` : 'Weighed'}
              labelUnseen={known}
              unit="g"
              value={row.mass}
              onChange={(mass) => form.changeRow(at, { mass })}
            />
            {known ? (
              <button
                type="button"
                className="button-plain"
                onClick={() => {
                  flushSync(() => openRow(at));
                  focusField(`/weighed/${at}/purity`);
                }}
              >
                Another lot<span className="unseen"> of {row.material}</span>
              </button>
            ) : (
              <OwnMaterial form={form} at={at} onRemove={() => removeRow(at)} />
            )}
            <Doubt>{doubtsAt(form.written, `/weighed/${at}`)}</Doubt>
          </fieldset>
        );
      })}
      <Doubt>{doubtsAt(form.written, '/weighed')}</Doubt>
      <button type="button" onClick={form.addRow}>
        Add a material
      </button>
    </div>
  );
}

/** What is in a material that no charge sheet knows, or of which another lot was weighed than the sheet has. */
function OwnMaterial({ form, at, onRemove }: { form: MeltForm; at: number; onRemove: () => void }) {
  const row = form.draft.weighed[at]!;
  return (
    <>
      <TextField
        pointer={`/weighed/${at}/contains`}
        label="Contains (a master alloy)"
        placeholder="Fe34Nb66"
        value={row.contains}
        onChange={(contains) => form.changeRow(at, { contains })}
      />
      <span className="charge-field">
        <label htmlFor={`melt-amounts-${at}`}>Amounts in</label>
        <select
          id={`melt-amounts-${at}`}
          value={row.amounts}
          onChange={(event) => form.changeRow(at, { amounts: event.target.value as 'wt.%' | 'at.%' })}
        >
          <option value="wt.%">wt.%</option>
          <option value="at.%">at.%</option>
        </select>
      </span>
      <NumberField
        pointer={`/weighed/${at}/purity`}
        label="Purity, wt.%"
        placeholder="100"
        value={row.purity}
        onChange={(purity) => form.changeRow(at, { purity })}
      />
      <button type="button" onClick={onRemove}>
        Remove<span className="unseen"> material {at + 1}</span>
      </button>
    </>
  );
}
