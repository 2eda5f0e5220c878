import type { Candidate } from '@tiegel/contract';
import { memo } from 'react';
import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { Shares } from '../../composition/Shares.tsx';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { candidateAddress } from '../candidateAddress.ts';
import { MarkBox } from '../marks/MarkBox.tsx';

interface CandidateRowProps {
  searchId: string;
  candidate: Candidate;
  index: number;
  rowNumber: number;
  columns: readonly ShownQuantity[];
  shareDecimals: number;
  reachable: boolean;
  selected: boolean;
  marked: boolean;
  /** marks these compositions, or takes the marks away */
  onMark: (texts: readonly string[]) => void;
}

/** One candidate as a row; the composition is the link to its page. */
export const CandidateRow = memo(function CandidateRow(props: CandidateRowProps) {
  const { searchId, candidate, index, rowNumber, columns, shareDecimals, reachable, selected } = props;
  const { marked, onMark } = props;
  const tabIndex = reachable ? 0 : -1;
  return (
    <tr
      data-index={index}
      aria-rowindex={rowNumber}
      className={selected ? 'candidate candidate-selected' : 'candidate'}
    >
      <td className="number sticky-rank">
        <span className="rank-cell">
          <MarkBox
            composition={candidate.composition}
            marked={marked}
            onMark={onMark}
            row={index}
            tabIndex={tabIndex}
          />
          <span>
            {candidate.front ? (
              <span className="front-mark" title="On the Pareto front">
                <span aria-hidden="true">◇</span>
                <span className="unseen">On the Pareto front, </span>
              </span>
            ) : null}
            {formatCount(candidate.rank)}
          </span>
        </span>
      </td>
      <th scope="row" className="sticky-composition">
        <span className="composition-cell">
          <ShareBar composition={candidate.composition} />
          <Link href={candidateAddress(searchId, candidate.composition)} data-row={index} tabIndex={tabIndex}>
            <Shares composition={candidate.composition} decimals={shareDecimals} />
          </Link>
        </span>
      </th>
      {columns.map(({ id, decimals }) => (
        <td key={id} className="number">
          {formatNumber(candidate.quantities[id], decimals)}
        </td>
      ))}
    </tr>
  );
});
