import { type ComparisonGroup, type ComparisonRow, differenceTerms, extremeOf } from '@tiegel/contract/terms';
import { Link } from 'wouter';
import { alloyAddress } from '../alloy/entry/alloyAddress.ts';
import { MetMark } from '../alloy/inSearch/MetMark.tsx';
import { shareDecimalsOf } from '../alloy/state/shareDecimalsOf.ts';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { Notation } from '../words/Notation.tsx';
import { Prose } from '../words/Prose.tsx';
import type { Compared } from './useCompared.ts';

/** What a comparison shows, on a wide screen and on a phone. */
export interface CompareProps {
  alloys: readonly Compared[];
  groups: readonly ComparisonGroup[];
  conditions: Record<string, number>;
  search: string | null;
  onRemove: (text: string) => void;
}

/** How much a line differs, as sign and word. */
export function differenceInWords({ difference }: ComparisonRow): string {
  if (difference === null) return '';
  const { sign, word } = differenceTerms[difference];
  return `${sign} ${word}`;
}

/** One of the alloys: its letter, its composition with the way to it, and the way to take it out. */
export function AlloyHead({
  alloy,
  conditions,
  search,
  onRemove,
}: Omit<CompareProps, 'alloys' | 'groups'> & { alloy: Compared }) {
  const { letter, text, composition } = alloy;
  return (
    <>
      <span className="compare-letter">{letter}</span>{' '}
      <Link href={alloyAddress(composition, conditions, search)}>
        <Shares composition={composition} decimals={shareDecimalsOf(composition, null)} />
      </Link>
      <ShareBar composition={composition} />
      <button type="button" className="button-plain" onClick={() => onRemove(text)}>
        Take {letter} out
      </button>
    </>
  );
}

/** What a line compares, with symbol and unit. */
export function RowName({ row: { name, symbol, unit } }: { row: ComparisonRow }) {
  return (
    <>
      {name}
      {symbol === '' ? null : (
        <>
          {' '}
          <Notation text={symbol} />
        </>
      )}
      {unit === '' ? '' : <span className="quiet">, {unit}</span>}
    </>
  );
}

/** What a line says of one alloy; the highest and the lowest of numbers that differ are marked, and whether a limit is met. */
export function CellText({ row, at }: { row: ComparisonRow; at: number }) {
  const { cells, numeric } = row;
  const { text, met } = cells[at]!;
  const extreme = extremeOf(row, at);
  return (
    <>
      {numeric ? (
        <span className="compare-mark">
          {extreme ? (
            <span className="compare-extreme" title={extreme}>
              <span aria-hidden="true">{extreme === 'highest' ? '▲' : '▼'}</span>
              <span className="unseen">{extreme} </span>
            </span>
          ) : null}
        </span>
      ) : null}{' '}
      {met === undefined ? null : (
        <>
          <MetMark met={met} />{' '}
        </>
      )}
      {numeric ? text : <Prose text={text} />}
    </>
  );
}
