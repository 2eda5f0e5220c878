import { Link } from 'wouter';
import { useInSight } from '../frame/useInSight.ts';
import type { useSaveSheet } from './useSaveSheet.ts';

/** An earlier press had saved a sheet although no answer came, and the form says something else since: a person decides. */
export function SavedBefore({ before, saveAnother }: Omit<ReturnType<typeof useSaveSheet>, 'saving'>) {
  const place = useInSight<HTMLDivElement>(before);
  if (before === null) return null;
  const { number, name } = before;
  return (
    <div ref={place} className="note note-warning" role="alert">
      <p>
        The first time you pressed,{' '}
        <Link href={`/charge-sheets/${number}`}>
          {number}
          {name === '' ? '' : ` · ${name}`}
        </Link>{' '}
        was saved, though the answer did not come. You changed the form since, and a saved sheet is never
        changed. Nothing was saved twice.
      </p>
      <p>
        <button type="button" onClick={saveAnother}>
          Save this with a number of its own
        </button>
      </p>
    </div>
  );
}
