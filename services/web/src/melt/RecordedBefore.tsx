import { Link } from 'wouter';
import { FaultList } from '../frame/FaultList.tsx';
import { useInSight } from '../frame/useInSight.ts';
import type { useRecordMelt } from './useRecordMelt.ts';

/** An earlier press had recorded the melt although no answer came, and the form says something else since: a person decides. */
export function RecordedBefore({ record }: { record: ReturnType<typeof useRecordMelt> }) {
  const { before, changing, recordAnother } = record;
  const place = useInSight<HTMLDivElement>(before);
  if (before === null) return null;
  const name = before.name === '' ? `the melt of ${before.date}` : `“${before.name}”`;
  return (
    <div ref={place} className="note note-warning" role="alert">
      <p>
        The first time you pressed, <Link href={`/melts/${before.id}`}>{name}</Link> was recorded, though the
        answer did not come. You changed the form since. Nothing was recorded twice.
      </p>
      <p className="row">
        <button type="button" aria-disabled={changing.isPending} onClick={() => changing.mutate(before)}>
          Change that melt to what stands here
        </button>
        <button type="button" onClick={recordAnother}>
          Record this as another melt
        </button>
      </p>
      <FaultList
        error={changing.error}
        what="Nothing was changed; what you entered is kept in this browser."
        unsure="Whether it was changed is not known; what you entered is kept in this browser. Press again when the server answers."
      />
    </div>
  );
}
