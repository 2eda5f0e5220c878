import { coolings, meltProcesses, observablePhases, observationMethods } from '@tiegel/contract/terms';
import { FaultText } from '../ask/faults/FaultText.tsx';
import { useFaultsAt } from '../ask/faults/faultsContext.ts';
import { NumberField } from '../ask/fields/NumberField.tsx';
import { TextField } from '../charge/TextField.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';
import { Choices } from './Choices.tsx';
import { Doubt } from './Doubt.tsx';
import { doubtfulDay } from './doubtfulDay.ts';
import { doubtsAt } from './entryOf.ts';
import { phaseInWords } from './phaseInWords.ts';
import type { MeltForm } from './useMeltForm.ts';

/** What the melt is called, when it was made, and from which charge sheet. */
export function MeltNaming({ form, sheets }: { form: MeltForm; sheets: readonly string[] }) {
  const { draft, change } = form;
  const charge = useFaultsAt('/charge');
  const date = useFaultsAt('/date');
  return (
    <div className="melt-fields">
      <TextField
        pointer="/name"
        label="Name of the melt"
        value={draft.name}
        onChange={(name) => change({ name })}
      />
      <span className="charge-field">
        <label htmlFor={date.id}>Day of the melt</label>
        <input
          id={date.id}
          type="date"
          value={draft.date}
          onChange={(event) => change({ date: event.target.value })}
          {...date.described}
        />
        <FaultText pointer="/date" />
        <Doubt>{doubtfulDay(draft.date)}</Doubt>
      </span>
      <span className="charge-field">
        <label htmlFor={charge.id}>Charge sheet</label>
        <input
          id={charge.id}
          type="text"
          list="melt-sheets"
          autoComplete="off"
          placeholder="C-0007, or none"
          value={draft.charge}
          onChange={(event) => change({ charge: event.target.value })}
          {...charge.described}
        />
        <datalist id="melt-sheets">
          {sheets.map((number) => (
            <option key={number} value={number} />
          ))}
        </datalist>
        <FaultText pointer="/charge" />
      </span>
    </div>
  );
}

/** How it was melted and annealed. */
export function MeltProcess({ form }: { form: MeltForm }) {
  const { draft, change } = form;
  const kelvin = Number(draft.annealTemperature.replace(',', '.'));
  return (
    <div className="melt-fields">
      <Select
        label="Process"
        id="melt-process"
        value={draft.process}
        all={meltProcesses}
        onChange={(process) => change({ process })}
      />
      <NumberField
        pointer="/ingot"
        label="Ingot"
        unit="g"
        value={draft.ingot}
        onChange={(ingot) => change({ ingot })}
      />
      <Doubt>{doubtsAt(form.written, '/ingot')}</Doubt>
      <label className="choice">
        <input
          type="checkbox"
          checked={draft.annealed}
          onChange={(event) => change({ annealed: event.target.checked })}
        />
        annealed
      </label>
      {draft.annealed ? (
        <>
          <NumberField
            pointer="/anneal/temperature"
            label="Anneal at"
            unit={kelvin > 0 ? `K (${formatNumber(kelvin - 273.15, 0)} °C)` : 'K'}
            value={draft.annealTemperature}
            onChange={(annealTemperature) => change({ annealTemperature })}
          />
          <NumberField
            pointer="/anneal/hours"
            label="for"
            unit="h"
            value={draft.annealHours}
            onChange={(annealHours) => change({ annealHours })}
          />
          <Select
            label="Cooled in"
            id="melt-cooling"
            value={draft.cooling}
            all={coolings}
            onChange={(cooling) => change({ cooling })}
          />
        </>
      ) : null}
    </div>
  );
}

/** What was seen and measured. */
export function MeltObservations({ form }: { form: MeltForm }) {
  const { draft, change } = form;
  const notes = useFaultsAt('/notes');
  return (
    <>
      <Choices
        legend="Phases that were observed (none ticked: nobody has looked yet)"
        all={observablePhases}
        chosen={draft.phases}
        onChange={(phases) => change({ phases })}
        say={phaseInWords}
      />
      <Choices
        legend="Observed by"
        all={observationMethods}
        chosen={draft.methods}
        onChange={(methods) => change({ methods })}
      />
      <FaultText pointer="/methods" />
      <div className="melt-fields">
        <NumberField
          pointer="/hardness"
          label="Hardness"
          unit="HV"
          value={draft.hardness}
          onChange={(hardness) => change({ hardness })}
        />
        <NumberField
          pointer="/density"
          label="Density"
          unit="g/cm³"
          value={draft.density}
          onChange={(density) => change({ density })}
        />
        <Doubt>{doubtsAt(form.written, '/density')}</Doubt>
      </div>
      <span className="charge-field">
        <label htmlFor={notes.id}>Notes</label>
        <textarea
          id={notes.id}
          rows={4}
          value={draft.notes}
          onChange={(event) => change({ notes: event.target.value })}
          {...notes.described}
        />
        <FaultText pointer="/notes" />
      </span>
    </>
  );
}

interface SelectProps<Value extends string> {
  label: string;
  id: string;
  value: Value;
  all: readonly Value[];
  onChange: (value: Value) => void;
}

function Select<Value extends string>({ label, id, value, all, onChange }: SelectProps<Value>) {
  return (
    <span className="charge-field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value as Value)}>
        {all.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
    </span>
  );
}
