import type { Candidate, SearchView } from '@tiegel/contract';
import { Link } from 'wouter';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { shareDecimals } from '../composition/shareDecimals.ts';
import { formatCount } from '../numbers/formatNumber.ts';
import type { QuantityView } from '../server/types.ts';
import { asSentence } from '../words/asSentence.ts';
import { scoreInWords } from './scoreInWords.ts';

interface CandidateHeadProps {
  search: SearchView;
  candidate: Candidate;
  quantities: readonly QuantityView[];
}

/** The composition, its place among the kept, and the question that it answers. */
export function CandidateHead({ search, candidate, quantities }: CandidateHeadProps) {
  const { id, name, question, kept, counts, specification } = search;
  return (
    <header className="column candidate-head">
      <p>
        <Link href={`/searches/${id}`}>{name === '' ? 'The search' : name}</Link>
      </p>
      <h1>
        <Shares composition={candidate.composition} decimals={shareDecimals(specification.fractions)} />
        <span className="candidate-unit">at.%</span>
      </h1>
      <ShareBar composition={candidate.composition} labelled />
      <p className="read">
        Rank <b>{formatCount(candidate.rank)}</b> of {formatCount(kept)} kept
        {counts.passed === null ? '' : `, of ${formatCount(counts.passed)} that passed`}:{' '}
        {scoreInWords(candidate, specification.rank, quantities, search.prices?.currency)}.
      </p>
      <p className="question quiet">{asSentence(question)}</p>
      <p className="screen-only">
        <button type="button" onClick={() => window.print()}>
          Print
        </button>
      </p>
    </header>
  );
}
