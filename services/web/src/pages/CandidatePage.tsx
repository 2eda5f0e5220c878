import { useQuery } from '@tanstack/react-query';
import { useParams } from 'wouter';
import { AlloyView } from '../alloy/AlloyView.tsx';
import { decoded, readAlloyText } from '../alloy/entry/readAlloyText.ts';
import { Unreadable } from '../alloy/entry/Unreadable.tsx';
import { useSettled } from '../ask/useSettled.ts';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { candidateQuery, searchQuery } from '../server/queries.ts';
import { ServerProblem } from '../server/request.ts';

/** A composition in the light of a search: its rank if the search kept it, its limits in any case. Printable. */
export function CandidatePage() {
  const { id = '', composition = '' } = useParams<{ id: string; composition: string }>();
  const written = decoded(composition);
  const read = readAlloyText(written);
  const settled = useSettled(read.text ?? '');
  const search = useQuery(searchQuery(id));
  const candidate = useQuery({
    ...candidateQuery(id, settled),
    enabled: settled !== '' && search.isSuccess,
  });
  useTitle(read.text ?? 'An alloy');

  if (search.error && !search.data) {
    return (
      <Failed
        error={search.error}
        what="The candidate"
        onRetry={() => void search.refetch()}
        list={{ to: '/searches', name: 'all searches' }}
      />
    );
  }
  if (read.faults) return <Unreadable text={written} faults={read.faults} />;
  if (!search.data) return <Waiting what="Fetching the candidate" />;
  const notKept = candidate.error instanceof ServerProblem && candidate.error.status === 404;
  const current = settled === read.text;
  return (
    <>
      {candidate.error && !notKept ? (
        <Failed
          error={candidate.error}
          what="The candidate’s rank"
          onRetry={() => void candidate.refetch()}
        />
      ) : null}
      <AlloyView
        composition={read.composition}
        search={search.data}
        candidate={current ? (candidate.data ?? null) : null}
        looking={!current || (!candidate.data && !candidate.error)}
      />
    </>
  );
}
