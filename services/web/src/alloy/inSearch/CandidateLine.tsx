import { formatCount } from '../../numbers/formatNumber.ts';
import { asSentence } from '../../words/asSentence.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { scoreInWords } from './scoreInWords.ts';

const notKept =
  'Not among the kept candidates of the search: it was changed here, lies off the grid, or did not pass or rank high enough. Space and limits of the search are tested below all the same.';

/**
 * The place of the composition in its search, or that the search did not keep it. The longest of its texts
 * always holds its room: what comes below must not move under the hand of whoever changes the amounts.
 */
export function CandidateLine({ alloy, looking }: { alloy: AlloyState; looking: boolean }) {
  const { search, candidate, quantities } = alloy;
  if (!search) return null;
  const { question, kept, counts, specification } = search;
  return (
    <>
      <div className="candidate-line">
        <p className="note" aria-hidden="true">
          {notKept}
        </p>
        {candidate ? (
          <p className="read">
            Rank <b>{formatCount(candidate.rank)}</b> of {formatCount(kept)} kept
            {counts.passed === null ? '' : `, of ${formatCount(counts.passed)} that passed`}:{' '}
            {scoreInWords(candidate, specification.rank, quantities, search.prices?.currency)}.
          </p>
        ) : (
          <p className="note" role="status">
            {looking ? 'Looking for it among the kept candidates …' : notKept}
          </p>
        )}
      </div>
      <p className="question quiet">{asSentence(question)}</p>
    </>
  );
}
