import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { demonstrationQuery } from '../../server/queries.ts';
import type { Draft } from '../draft/draft.ts';
import { type AcceptedSpecification, draftOf } from '../draft/draftOf.ts';

/** Fills the form with the demonstration and tells its story, with what to beware of. */
export function DemonstrationButton({ onLoad }: { onLoad: (draft: Draft) => void }) {
  const { data, refetch, isFetching } = useQuery({ ...demonstrationQuery, enabled: false });
  const [told, setTold] = useState(false);
  const load = async () => {
    const found = data ?? (await refetch()).data;
    if (!found) return;
    onLoad(draftOf(found.specification as AcceptedSpecification));
    setTold(true);
  };
  return (
    <>
      <button type="button" onClick={load} disabled={isFetching}>
        As the demonstration
      </button>
      {told && data ? (
        <div className="note demonstration" role="status">
          <p>{data.story}</p>
          {data.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
          <button type="button" className="button-plain" onClick={() => setTold(false)}>
            Close the story
          </button>
        </div>
      ) : null}
    </>
  );
}
