import { decimalsOf } from '@tiegel/charge';
import { NumberField } from '../ask/fields/NumberField.tsx';
import { TextField } from '../charge/TextField.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';
import { Doubt } from './Doubt.tsx';
import { doubtsAt, isAsOnSheet } from './entryOf.ts';
import type { MeltForm } from './useMeltForm.ts';

/** What the balance showed of each material: those of the charge sheet, and whatever was added to them. */
export function WeighedRows({ form }: { form: MeltForm }) {
  const { draft, sheet } = form;
  return (
    <div className="melt-rows">
      {draft.weighed.map((row, at) => {
        const line = sheet?.lines.find(({ material }) => material === row.material);
        const known = isAsOnSheet(row, sheet);
        return (
          // A row is what it is by its place: its name may be changed while somebody types.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <fieldset key={at} className="melt-row">
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
            {known ? null : <OwnMaterial form={form} at={at} />}
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
function OwnMaterial({ form, at }: { form: MeltForm; at: number }) {
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
      <button type="button" onClick={() => form.removeRow(at)}>
        Remove<span className="unseen"> material {at + 1}</span>
      </button>
    </>
  );
}
