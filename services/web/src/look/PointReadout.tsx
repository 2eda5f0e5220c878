import { useQuery } from '@tanstack/react-query';
import type { SearchView } from '@tiegel/contract';
import { Link } from 'wouter';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { shareDecimals } from '../composition/shareDecimals.ts';
import { Prose } from '../words/Prose.tsx';
import { candidateAddress } from './candidateAddress.ts';
import type { LayerPoint } from './layersOf.ts';
import { candidateOfRankQuery } from './lookQueries.ts';

interface PointReadoutProps {
  search: SearchView;
  words: string;
  /** of a candidate */
  rank: number | null;
  /** a published alloy or a melt */
  other: LayerPoint | null;
}

/** A point of a plot: its composition with the way to its page, and its values. */
export function PointReadout({ search, words, rank, other }: PointReadoutProps) {
  const { data } = useQuery({ ...candidateOfRankQuery(search.id, rank ?? 0), enabled: rank !== null });
  const composition = other?.composition ?? data?.composition;
  return (
    <div className="point-readout">
      {composition ? (
        <span className="point-composition">
          <ShareBar composition={composition} />
          {other ? (
            <Shares composition={other.composition} decimals={1} />
          ) : (
            <Link href={candidateAddress(search.id, composition)}>
              <Shares composition={composition} decimals={shareDecimals(search.specification.fractions)} />
            </Link>
          )}
        </span>
      ) : null}
      <span>
        <Prose text={words[0]!.toUpperCase() + words.slice(1)} />
      </span>
      {other?.doi ? <span className="quiet">doi {other.doi}</span> : null}
      {other?.melt ? <Link href={`/melts/${encodeURIComponent(other.melt)}`}>Open the melt</Link> : null}
    </div>
  );
}
