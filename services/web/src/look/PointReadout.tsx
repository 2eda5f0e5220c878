import { useQuery } from '@tanstack/react-query';
import type { SearchView } from '@tiegel/contract';
import { Link } from 'wouter';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { shareDecimals } from '../composition/shareDecimals.ts';
import { candidateAddress } from './candidateAddress.ts';
import { candidateOfRankQuery, type PublishedView } from './lookQueries.ts';

interface PointReadoutProps {
  search: SearchView;
  words: string;
  /** of a candidate */
  rank: number | null;
  published: PublishedView | null;
}

/** A point of a plot: its composition with the way to its page, and its values. */
export function PointReadout({ search, words, rank, published }: PointReadoutProps) {
  const { data } = useQuery({ ...candidateOfRankQuery(search.id, rank ?? 0), enabled: rank !== null });
  const composition = published?.composition ?? data?.composition;
  return (
    <div className="point-readout">
      {composition ? (
        <span className="point-composition">
          <ShareBar composition={composition} />
          {published ? (
            <Shares composition={composition} decimals={1} />
          ) : (
            <Link href={candidateAddress(search.id, composition)}>
              <Shares composition={composition} decimals={shareDecimals(search.specification.fractions)} />
            </Link>
          )}
        </span>
      ) : null}
      <span>{words[0]!.toUpperCase() + words.slice(1)}</span>
      {published?.doi[0] ? <span className="quiet">doi {published.doi[0]}</span> : null}
    </div>
  );
}
