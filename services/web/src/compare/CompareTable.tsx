import { Fragment } from 'react';
import { Link } from 'wouter';
import { alloyAddress } from '../alloy/alloyAddress.ts';
import { shareDecimalsOf } from '../alloy/shareDecimalsOf.ts';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { Notation } from '../words/Notation.tsx';
import { type Difference, extremeOf } from './differenceOf.ts';
import type { CompareRow, RowGroup } from './rowsOf.ts';
import type { Compared } from './useCompared.ts';

interface CompareTableProps {
  alloys: readonly Compared[];
  groups: readonly RowGroup[];
  conditions: Record<string, number>;
  search: string | null;
  onRemove: (text: string) => void;
}

const differs: Readonly<Record<Difference, string>> = {
  none: '= alike',
  little: '≈ little',
  some: '≠ some',
  much: '≠≠ much',
  unlike: '≠ differs',
};

/** Alloys as columns, what is compared as lines; what differs is marked by words and signs. */
export function CompareTable({ alloys, groups, conditions, search, onRemove }: CompareTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keys
    <section className="scroll-x" aria-label="Side by side" tabIndex={0}>
      <table className="plain-table compare-table" style={{ ['--alloys' as string]: alloys.length }}>
        <thead>
          <tr>
            <th scope="col">What</th>
            {alloys.map(({ letter, text, composition }) => (
              <th key={text} scope="col" className="compare-alloy">
                <span className="compare-letter">{letter}</span>{' '}
                <Link href={alloyAddress(composition, conditions, search)}>
                  <Shares composition={composition} decimals={shareDecimalsOf(composition, null)} />
                </Link>
                <ShareBar composition={composition} />
                <button type="button" className="button-plain" onClick={() => onRemove(text)}>
                  Take {letter} out
                </button>
              </th>
            ))}
            <th scope="col">Differs</th>
          </tr>
        </thead>
        <tbody>
          {groups.map(({ head, rows }) => (
            <Fragment key={head}>
              <tr className="compare-group">
                <th scope="rowgroup" colSpan={alloys.length + 2}>
                  {head}
                </th>
              </tr>
              {rows.map((row) => (
                <Row key={row.id} row={row} letters={alloys.map(({ letter }) => letter)} />
              ))}
            </Fragment>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Row({ row, letters }: { row: CompareRow; letters: readonly string[] }) {
  const { name, symbol, unit, cells, difference, numeric } = row;
  const values = cells.map(({ value }) => value);
  const marked = numeric && (difference === 'some' || difference === 'much' || difference === null);
  return (
    <tr className={`differs-${difference ?? 'unknown'}`}>
      <th scope="row" className="plain">
        {name}
        {symbol === '' ? null : (
          <>
            {' '}
            <Notation text={symbol} />
          </>
        )}
        {unit === '' ? '' : <span className="quiet">, {unit}</span>}
      </th>
      {cells.map(({ text, value }, at) => {
        const extreme = marked ? extremeOf(value, values) : null;
        return (
          <td key={letters[at]} className={numeric ? 'number' : undefined}>
            {extreme ? (
              <span className="compare-extreme" title={extreme}>
                <span aria-hidden="true">{extreme === 'highest' ? '▲' : '▼'}</span>
                <span className="unseen">{extreme} </span>
              </span>
            ) : null}{' '}
            {text}
          </td>
        );
      })}
      <td className="compare-differs">{difference === null ? '' : differs[difference]}</td>
    </tr>
  );
}
