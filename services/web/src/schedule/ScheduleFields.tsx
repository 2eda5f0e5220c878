import { priorities, priorityInWords } from '@tiegel/contract/terms';
import { useId } from 'react';
import { type ScheduleDraft, scheduleFault } from './scheduleDraft.ts';
import './schedule.css';

interface ScheduleFieldsProps {
  draft: ScheduleDraft;
  onChange: (draft: ScheduleDraft) => void;
}

/** Between which times of day a search is worked on, and before or behind others. */
export function ScheduleFields({ draft, onChange }: ScheduleFieldsProps) {
  const field = useId();
  const fault = scheduleFault(draft);
  const time = (name: 'from' | 'to') => (
    <input
      id={`${field}-${name}`}
      type="time"
      aria-invalid={draft[name] === ''}
      aria-describedby={`${field}-fault`}
      value={draft[name]}
      onChange={(event) => onChange({ ...draft, [name]: event.target.value })}
    />
  );
  return (
    <>
      <p className="row">
        <label>
          <input
            type="checkbox"
            checked={draft.limited}
            onChange={(event) => onChange({ ...draft, limited: event.target.checked })}
          />{' '}
          Only between two times of day
        </label>
      </p>
      {draft.limited ? (
        <>
          <p className="row">
            <span className="row">
              <label htmlFor={`${field}-from`}>Works from</label>
              {time('from')}
            </span>
            <span className="row">
              <label htmlFor={`${field}-to`}>until</label>
              {time('to')}
            </span>
          </p>
          <p className="row">
            <label htmlFor={`${field}-zone`}>by the clock of</label>
            <input
              id={`${field}-zone`}
              list={`${field}-zones`}
              autoComplete="off"
              aria-invalid={fault !== null && draft.from !== '' && draft.to !== ''}
              aria-describedby={`${field}-fault`}
              value={draft.zone}
              onChange={(event) => onChange({ ...draft, zone: event.target.value })}
            />
            <datalist id={`${field}-zones`}>
              {Intl.supportedValuesOf('timeZone').map((zone) => (
                <option key={zone} value={zone} />
              ))}
            </datalist>
          </p>
        </>
      ) : null}
      <p id={`${field}-fault`} className="fault">
        {fault}
      </p>
      <p className="row">
        <label htmlFor={`${field}-priority`}>Among several searches it goes</label>
        <select
          id={`${field}-priority`}
          value={draft.priority}
          onChange={(event) =>
            onChange({ ...draft, priority: event.target.value as ScheduleDraft['priority'] })
          }
        >
          {priorities.map((one) => (
            <option key={one} value={one}>
              {priorityInWords[one]}
            </option>
          ))}
        </select>
      </p>
    </>
  );
}
