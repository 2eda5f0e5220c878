import { useQuery } from '@tanstack/react-query';
import type { SearchView } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { Shares } from '../../composition/Shares.tsx';
import { shareDecimals } from '../../composition/shareDecimals.ts';
import { Prose } from '../../words/Prose.tsx';
import { candidateAddress } from '../candidateAddress.ts';
import { candidateOfRankQuery } from '../lookQueries.ts';
import { MarkBox } from '../marks/MarkBox.tsx';
import type { Marks } from '../marks/useMarks.ts';
import type { LayerPoint } from './layersOf.ts';

interface PointReadoutProps {
  search: SearchView;
  words: string;
  /** of a candidate */
  rank: number | null;
  /** a published alloy or a melt */
  other: LayerPoint | null;
  marks: Marks;
}

/** A point of a plot: its composition with the way to its page, its values, and the box that marks a candidate. */
export function PointReadout({ search, words, rank, other, marks }: PointReadoutProps) {
  const { data, error } = useQuery({ ...candidateOfRankQuery(search.id, rank ?? 0), enabled: rank !== null });
  const composition = other?.composition ?? data?.composition;
  return (
    <div className="point-readout">
      {data && !other ? (
        <MarkBox
          composition={data.composition}
          marked={marks.marked.includes(formatComposition(data.composition))}
          onMark={marks.turn}
        >
          Mark
        </MarkBox>
      ) : null}
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
      {error && !other ? (
        <span className="fault">Its composition could not be fetched: {error.message}</span>
      ) : null}
      {other?.doi ? <span className="quiet">doi {other.doi}</span> : null}
      {other?.melt ? <Link href={`/melts/${encodeURIComponent(other.melt)}`}>Open the melt</Link> : null}
    </div>
  );
}
