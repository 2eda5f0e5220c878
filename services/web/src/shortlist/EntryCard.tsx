import type { ShortlistAct, ShortlistEntry } from '@tiegel/contract';
import { shortlistStatuses } from '@tiegel/contract/terms';
import { parseAlloy } from '@tiegel/elements';
import { useId } from 'react';
import { Link } from 'wouter';
import { shareDecimalsOf } from '../alloy/state/shareDecimalsOf.ts';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { formatInstant } from '../numbers/formatInstant.ts';
import { Conflict } from './Conflict.tsx';
import { EntryNumbers } from './EntryNumbers.tsx';
import { NoteForm } from './NoteForm.tsx';

interface EntryCardProps {
  /** id of the shortlist */
  list: string;
  entry: ShortlistEntry;
  /** '' where nobody said who they are: nothing can be changed then */
  person: string;
  act: (act: ShortlistAct) => void;
}

/** One alloy of a shortlist: what it is, how far it is, what people wrote. */
export function EntryCard({ list, entry, person, act }: EntryCardProps) {
  const { entry: text, status, notes, removed, addedBy, addedAt, search } = entry;
  const id = useId();
  const composition = parseAlloy(text);
  const mute = person.trim() === '';
  return (
    <article className="short-entry" aria-labelledby={`${id}-name`}>
      <h2 id={`${id}-name`}>
        <Link href={`/alloys/${text}`}>
          <Shares composition={composition} decimals={shareDecimalsOf(composition, null)} />
        </Link>{' '}
        <span className="quiet small plain">at.%</span>
      </h2>
      <ShareBar composition={composition} />
      <EntryNumbers entry={text} />
      <p className="row">
        <label htmlFor={`${id}-status`}>How far</label>
        <select
          id={`${id}-status`}
          value={status.value}
          disabled={mute}
          onChange={(event) =>
            act({
              kind: 'status',
              entry: text,
              status: event.target.value as ShortlistEntry['status']['value'],
            })
          }
        >
          {shortlistStatuses.map((one) => (
            <option key={one}>{one}</option>
          ))}
        </select>
        <Link className="button" href={`/charge?alloy=${text}`}>
          Weigh it out
        </Link>
        <button
          type="button"
          className="button-plain"
          disabled={mute}
          onClick={() => act({ kind: 'remove', entry: text })}
        >
          Take off the list
        </button>
      </p>
      <Conflict entry={entry} disabled={mute} act={act} />
      <p className="quiet small">
        Added by {addedBy}, {formatInstant(addedAt)}
        {search === null ? null : (
          <>
            , from <Link href={`/searches/${search}`}>a search</Link>
          </>
        )}
        {status.by === addedBy && status.at === addedAt ? null : `; set to “${status.value}” by ${status.by}`}
        {removed.rivals.length > 0 ? `; back on the list` : null}
      </p>
      <ul className="short-notes">
        {notes.map(({ sequence, text: written, by, at }) => (
          <li key={sequence}>
            {written}{' '}
            <span className="quiet small">
              {by}, {formatInstant(at)}
            </span>
          </li>
        ))}
      </ul>
      <NoteForm list={list} entry={text} disabled={mute} act={act} />
    </article>
  );
}
