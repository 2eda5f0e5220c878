import { useParams } from 'wouter';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { apiRoot } from '../server/request.ts';
import { AddAlloyForm } from '../shortlist/AddAlloyForm.tsx';
import { CompareEntries } from '../shortlist/CompareEntries.tsx';
import { EntryCard } from '../shortlist/EntryCard.tsx';
import { PersonField } from '../shortlist/PersonField.tsx';
import { PickForm } from '../shortlist/PickForm.tsx';
import { usePerson } from '../shortlist/person.ts';
import { RemovedEntries } from '../shortlist/RemovedEntries.tsx';
import { ShortlistOrigin } from '../shortlist/ShortlistOrigin.tsx';
import '../shortlist/shortlist.css';
import { type ShortlistState, useShortlist } from '../shortlist/useShortlist.ts';

/** One shortlist: what is on it, what people said, and what has not reached the others yet. */
export function ShortlistPage() {
  const { id = '' } = useParams<{ id: string }>();
  const [person, setPerson] = usePerson();
  const { list, unsent, awaited, error, hindered, refused, act, retry } = useShortlist(id);
  useTitle(list?.name.value ?? 'Shortlist');
  if (error && !list)
    return (
      <Failed
        error={error}
        what="The shortlist"
        onRetry={retry}
        list={{ to: '/shortlists', name: 'all shortlists' }}
      />
    );
  if (!list) return <Waiting what="Fetching the shortlist" />;
  const standing = list.entries.filter(({ removed }) => !removed.value);
  const mute = person.trim() === '';
  return (
    <div className="short-page">
      <header>
        <h1>{list.name.value}</h1>
        <p className="quiet">
          Begun by {list.name.by}.{' '}
          {setPerson === null
            ? 'Everyone with a token sees it; authors and keepers may write on it.'
            : 'Everyone with this page’s address sees it and may write on it.'}
        </p>
        <p className="row screen-only">
          <CompareEntries entries={standing} />
          <a href={`${apiRoot}/shortlists/${id}/export?format=html`}>Save as one file</a>
          <a href={`${apiRoot}/shortlists/${id}/export?format=csv`}>Save as CSV</a>
          <button type="button" className="button-plain" onClick={() => window.print()}>
            Print
          </button>
        </p>
        <div className="short-person">
          <PersonField />
        </div>
        <Standing
          unsent={unsent}
          awaited={awaited}
          stale={error !== null}
          hindered={hindered}
          refused={refused}
        />
      </header>
      {standing.length === 0 ? (
        <p className="read">
          No alloy is on it yet. Type one below, pick some of a search, or use “Add to a shortlist” on the
          page of an alloy.
        </p>
      ) : null}
      {standing.map((entry) => (
        <EntryCard key={entry.entry} list={id} entry={entry} person={person} act={act} />
      ))}
      <AddAlloyForm list={id} disabled={mute} act={act} />
      <PickForm id={id} person={person} />
      <RemovedEntries entries={list.entries} disabled={mute} act={act} />
      <ShortlistOrigin />
    </div>
  );
}

interface StandingProps extends Pick<ShortlistState, 'unsent' | 'awaited' | 'hindered' | 'refused'> {
  stale: boolean;
}

function Standing({ unsent, awaited, stale, hindered, refused }: StandingProps) {
  const occasion = hindered ? `takes them. It cannot now: ${hindered.message}` : 'answers.';
  return (
    <>
      <p role="status" className={unsent > 0 || stale ? 'note' : 'unseen'}>
        {unsent > 0
          ? `${unsent} ${unsent === 1 ? 'change is' : 'changes are'} kept in this browser and not sent yet; they go out as soon as the server ${occasion}`
          : stale
            ? 'The server does not answer: what others changed since does not show.'
            : 'Everything is sent.'}
      </p>
      {awaited.map((name) => (
        <p key={name} className="note">
          What {name} changed on this list is kept in this browser and not sent yet; it goes out when {name}{' '}
          signs in here.
        </p>
      ))}
      {refused ? (
        <p role="alert" className="note note-danger">
          <b>A change was refused:</b> {refused.message}
        </p>
      ) : null}
    </>
  );
}
