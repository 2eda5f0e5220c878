import { useMutation, useQueryClient } from '@tanstack/react-query';
import { hoursInWords, type Priority, priorities, type SearchView } from '@tiegel/contract';
import { useId, useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { searchKey } from '../server/queries.ts';
import { request } from '../server/request.ts';

type Schedule = SearchView['schedule'];

const inWords: Record<Priority, string> = {
  first: 'before all others',
  usual: 'in turn with the others',
  last: 'when nothing else waits',
};

/** When a search is worked on: between which times of day, and before or behind others. */
export function SchedulePanel({ search }: { search: SearchView }) {
  const { id, schedule } = search;
  const client = useQueryClient();
  const field = useId();
  const [open, setOpen] = useState(false);
  const [draft, setDraft] = useState(() => draftOf(schedule));
  const { mutate, error, isPending } = useMutation({
    mutationFn: (asked: Schedule) =>
      request<SearchView>(`/searches/${id}/schedule`, { method: 'PUT', body: JSON.stringify(asked) }),
    onSuccess: (view) => {
      client.setQueryData(searchKey(id), view);
      setOpen(false);
    },
  });
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        Worked on {schedule.hours === null ? 'at any time' : `from ${hoursInWords(schedule.hours)}`},{' '}
        {inWords[schedule.priority]}
      </summary>
      <form
        className="schedule"
        onSubmit={(event) => {
          event.preventDefault();
          mutate(scheduleOf(draft));
        }}
      >
        <p className="row">
          <label>
            <input
              type="checkbox"
              checked={draft.limited}
              onChange={(event) => setDraft({ ...draft, limited: event.target.checked })}
            />{' '}
            Only between two times of day
          </label>
        </p>
        {draft.limited ? (
          <p className="row">
            <label htmlFor={`${field}-from`}>From</label>
            <input
              id={`${field}-from`}
              type="time"
              required
              value={draft.from}
              onChange={(event) => setDraft({ ...draft, from: event.target.value })}
            />
            <label htmlFor={`${field}-to`}>to</label>
            <input
              id={`${field}-to`}
              type="time"
              required
              value={draft.to}
              onChange={(event) => setDraft({ ...draft, to: event.target.value })}
            />
            <label htmlFor={`${field}-zone`}>by the clock of</label>
            <input
              id={`${field}-zone`}
              list={`${field}-zones`}
              required
              value={draft.zone}
              onChange={(event) => setDraft({ ...draft, zone: event.target.value })}
            />
            <datalist id={`${field}-zones`}>
              {zones().map((zone) => (
                <option key={zone} value={zone} />
              ))}
            </datalist>
          </p>
        ) : null}
        <p className="row">
          <label htmlFor={`${field}-priority`}>Among several searches it goes</label>
          <select
            id={`${field}-priority`}
            value={draft.priority}
            onChange={(event) => setDraft({ ...draft, priority: event.target.value as Priority })}
          >
            {priorities.map((one) => (
              <option key={one} value={one}>
                {inWords[one]}
              </option>
            ))}
          </select>
        </p>
        <p className="row">
          <button type="submit" disabled={isPending}>
            Keep these hours
          </button>
          {schedule.hours === null ? null : (
            <button type="button" disabled={isPending} onClick={() => mutate({ ...schedule, hours: null })}>
              Start now, at any time
            </button>
          )}
        </p>
        <FaultList error={error} what="The hours are as before." />
      </form>
    </details>
  );
}

interface Draft {
  limited: boolean;
  from: string;
  to: string;
  zone: string;
  priority: Priority;
}

function draftOf({ hours, priority }: Schedule): Draft {
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const { from, to, zone } = hours ?? { from: '20:00', to: '06:00', zone: timeZone };
  return { limited: hours !== null, from, to, zone, priority };
}

function scheduleOf({ limited, from, to, zone, priority }: Draft): Schedule {
  return { hours: limited ? { zone: zone.trim(), from, to } : null, priority };
}

function zones(): string[] {
  return Intl.supportedValuesOf('timeZone');
}
