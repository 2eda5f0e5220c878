import { NumberField } from '../ask/fields/NumberField.tsx';
import type { MasterRow } from './chargeDraft.ts';
import { TextField } from './TextField.tsx';
import type { ChargeForm } from './useChargeDraft.ts';

/** Master alloys that may be charged: taken where they are cheaper than the metals, or where a metal is missing. */
export function MasterAlloys({ form, currency }: { form: ChargeForm; currency: string }) {
  const { masters } = form.draft;
  return (
    <div className="charge-masters">
      {masters.map((row, at) => (
        // A row has no name of its own that lasts: its place is what it is.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <fieldset key={at} className="charge-master">
          <legend className="unseen">Material {at + 1}</legend>
          <MasterFields row={row} at={at} currency={currency} write={(part) => form.changeMaster(at, part)} />
          <button type="button" onClick={() => form.removeMaster(at)}>
            Remove<span className="unseen"> material {at + 1}</span>
          </button>
        </fieldset>
      ))}
      <button type="button" onClick={form.addMaster}>
        Add a master alloy
      </button>
    </div>
  );
}

interface MasterFieldsProps {
  row: MasterRow;
  at: number;
  currency: string;
  write: (part: Partial<MasterRow>) => void;
}

function MasterFields({ row, at, currency, write }: MasterFieldsProps) {
  const place = `/masters/${at}`;
  return (
    <>
      <TextField
        pointer={`${place}/contains`}
        label="Contains"
        placeholder="Fe34Nb66"
        value={row.contains}
        onChange={(contains) => write({ contains })}
      />
      <span className="charge-field">
        <label htmlFor={`amounts-${at}`}>Amounts in</label>
        <select
          id={`amounts-${at}`}
          value={row.amounts}
          onChange={(event) => write({ amounts: event.target.value as MasterRow['amounts'] })}
        >
          <option value="wt.%">wt.%</option>
          <option value="at.%">at.%</option>
        </select>
      </span>
      <TextField
        pointer={`${place}/name`}
        label="Name on the shelf"
        placeholder={row.contains.trim() || 'FeNb66'}
        value={row.name}
        onChange={(name) => write({ name })}
      />
      <NumberField
        pointer={`${place}/purity`}
        label="Purity, wt.%"
        placeholder="100"
        value={row.purity}
        onChange={(purity) => write({ purity })}
      />
      <NumberField
        pointer={`${place}/price`}
        label={`Price, ${currency}/kg`}
        placeholder="unknown"
        value={row.price}
        onChange={(price) => write({ price })}
      />
    </>
  );
}
