import type { SearchView } from '@tiegel/contract';
import { mostCompared } from '@tiegel/contract/terms';
import { parseAlloy, spacedComposition } from '@tiegel/elements';
import { Suspense } from 'react';
import { Link } from 'wouter';
import { CompareLink } from '../../compare/CompareLink.tsx';
import { Shares } from '../../composition/Shares.tsx';
import { shareDecimals } from '../../composition/shareDecimals.ts';
import { latePart } from '../../frame/latePart.tsx';
import { useNarrow } from '../../frame/useNarrow.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { candidateAddress } from '../candidateAddress.ts';
import { mostMarked } from './marks.ts';
import type { Marks } from './useMarks.ts';

// The first page does without shortlists.
const AddToShortlist = latePart(
  async () => (await import('../../shortlist/AddToShortlist.tsx')).AddToShortlist,
);

interface MarkedProps {
  search: SearchView;
  marks: Marks;
}

/** What of the view above or below it is marked, each. */
type Marking = 'row' | 'point';

/** How many candidates are marked, which, and what can be done with them together. */
export function Marked({ search, marks, each }: MarkedProps & { each: Marking }) {
  const { marked, refused, cleared, clear, bringBack } = marks;
  return (
    <section className={marked.length > 0 ? 'marked marked-some' : 'marked'} aria-label="Marked candidates">
      <p role="status" className={marked.length === 0 ? 'unseen' : undefined}>
        {marked.length === 0 ? 'None marked' : `${formatCount(marked.length)} marked`}
      </p>
      {marked.length === 0 ? (
        <NoneMarked each={each} cleared={cleared} onBringBack={bringBack} />
      ) : (
        <>
          <CompareMarked search={search} marked={marked} />
          <button type="button" className="button-plain" onClick={clear}>
            Clear the marks
          </button>
          <MarkedList search={search} marks={marks} />
          <Suspense fallback={<span className="quiet">Add to a shortlist</span>}>
            <AddToShortlist entries={marked} search={search.id} />
          </Suspense>
        </>
      )}
      {refused === null ? null : (
        <p role="alert" className="fault">
          {mostMarked} candidates are as many as can be marked, and these would make {formatCount(refused)}:
          none of them was marked. Mark fewer, or narrow them down by a filter.
        </p>
      )}
    </section>
  );
}

const ways: Readonly<Record<Marking, string>> = {
  row: ' by their boxes, or by Space on a row,',
  point: ' by the box of a point that was clicked, or by Space on a point,',
};

interface NoneMarkedProps {
  each: Marking;
  cleared: readonly string[];
  onBringBack: () => void;
}

function NoneMarked({ each, cleared, onBringBack }: NoneMarkedProps) {
  const narrow = useNarrow();
  if (cleared.length > 0) {
    return (
      <p className="row">
        The marks are cleared.
        <button type="button" className="button-plain" onClick={onBringBack}>
          Bring {cleared.length === 1 ? 'the one' : `the ${formatCount(cleared.length)}`} back
        </button>
      </p>
    );
  }
  return (
    <p className="quiet">
      Mark candidates{narrow ? '' : ways[each]} to compare them or to put them on a shortlist.
    </p>
  );
}

/** Which candidates are marked: also those that a filter or the order keeps out of sight. */
function MarkedList({ search, marks: { marked, turn } }: MarkedProps) {
  return (
    <details className="marked-list">
      <summary>Show what is marked</summary>
      <ul>
        {marked.map((text) => {
          const composition = parseAlloy(text);
          return (
            <li key={text}>
              <Link href={candidateAddress(search.id, composition)}>
                <Shares composition={composition} decimals={shareDecimals(search.specification.fractions)} />
              </Link>
              <button
                type="button"
                className="button-plain"
                aria-label={`Take the mark of ${spacedComposition(composition)} away`}
                onClick={() => turn([text])}
              >
                ×
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}

function CompareMarked({ search, marked }: { search: SearchView; marked: readonly string[] }) {
  const { id, specification } = search;
  if (marked.length === 1) return <span className="quiet">Mark one more to compare.</span>;
  if (marked.length > mostCompared) {
    return (
      <span className="quiet">
        {mostCompared} are as many as can be compared: take{' '}
        {marked.length === mostCompared + 1
          ? 'one mark'
          : `${formatCount(marked.length - mostCompared)} marks`}{' '}
        away.
      </span>
    );
  }
  return (
    <CompareLink className="button" alloys={marked} conditions={specification.conditions} search={id}>
      Compare the {marked.length}
    </CompareLink>
  );
}
