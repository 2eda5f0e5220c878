import { useQuery } from '@tanstack/react-query';
import { useParams } from 'wouter';
import { CandidateHead } from '../alloy/CandidateHead.tsx';
import '../alloy/alloy.css';
import { CandidateHazards } from '../alloy/CandidateHazards.tsx';
import { LimitMargins } from '../alloy/LimitMargins.tsx';
import { Provenance } from '../alloy/Provenance.tsx';
import { QuantityList } from '../alloy/QuantityList.tsx';
import { Sensitivities } from '../alloy/Sensitivities.tsx';
import { ShareTable } from '../alloy/ShareTable.tsx';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { candidateQuery, elementsQuery, quantitiesQuery, searchQuery } from '../server/queries.ts';

/** A candidate: its shares, every quantity with formula and source, its limits, its hazards. Printable. */
export function CandidatePage() {
  const { id = '', composition = '' } = useParams<{ id: string; composition: string }>();
  const search = useQuery(searchQuery(id));
  const candidate = useQuery(candidateQuery(id, decodeURIComponent(composition)));
  const quantities = useQuery(quantitiesQuery);
  const elements = useQuery(elementsQuery);
  useTitle(composition);

  const queries = [search, candidate, quantities, elements];
  const failed = queries.find(({ error, data }) => error && !data);
  if (failed)
    return <Failed error={failed.error} what="The candidate" onRetry={() => void failed.refetch()} />;
  if (!search.data || !candidate.data || !quantities.data || !elements.data) {
    return <Waiting what="Fetching the candidate" />;
  }
  const shown = { search: search.data, candidate: candidate.data, quantities: quantities.data };
  return (
    <article className="column candidate-page">
      <CandidateHead {...shown} />
      <div className="candidate-sides">
        <ShareTable {...shown} />
        <LimitMargins {...shown} />
      </div>
      <QuantityList {...shown} />
      <Sensitivities {...shown} elements={elements.data} />
      <CandidateHazards composition={candidate.data.composition} elements={elements.data} />
      <Provenance search={search.data} />
    </article>
  );
}
