import type { PairAffinity } from '@tiegel/contract';
import { WideContent } from '../../frame/WideContent.tsx';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { Prose } from '../../words/Prose.tsx';
import { kelvinInWords } from '../conditions/kelvinInWords.ts';

/** How strong a value is, in four steps of tint; the number stands in the cell anyway. */
const steps = [0.02, 0.06, 0.15];

/** Which pairs of atoms seek and avoid each other: a table, tinted, each cell with its number. */
export function PairMap({ affinity }: { affinity: PairAffinity }) {
  const { pairs, temperature, coordination, words, trust } = affinity;
  const symbols = [...new Set(pairs.flatMap(({ a, b }) => [a, b]))].sort();
  const of = (a: string, b: string) =>
    pairs.find((pair) => (pair.a === a && pair.b === b) || (pair.a === b && pair.b === a));
  return (
    <div className="pair-map-part">
      <h3 id="pairs">Which atoms seek each other</h3>
      <p className="read-small">
        <Prose text={words} />
      </p>
      <WideContent labelledBy="pairs">
        <table className="pair-map">
          <thead>
            <tr>
              <td />
              {symbols.slice(0, -1).map((symbol) => (
                <th key={symbol} scope="col">
                  {symbol}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {symbols.slice(1).map((row, at) => (
              <tr key={row}>
                <th scope="row">{row}</th>
                {symbols.slice(0, at + 1).map((column) => {
                  const pair = of(row, column);
                  if (!pair) return <td key={column} />;
                  return (
                    <td key={column} className={`pair-${toneOf(pair.shortRangeOrder)}`}>
                      <span aria-hidden="true" className="pair-sign">
                        {pair.shortRangeOrder < 0 ? '▸◂' : pair.shortRangeOrder > 0 ? '◂▸' : ''}
                      </span>{' '}
                      {pair.shortRangeOrder > 0 ? '+' : ''}
                      {formatNumber(pair.shortRangeOrder, 2)}
                      {pair.limited ? <abbr title="held at what is possible">*</abbr> : null}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </WideContent>
      <p className="small quiet read-small">
        Warren–Cowley parameter of nearest neighbours at {kelvinInWords(temperature)}, {coordination}{' '}
        neighbours. Below 0 (▸◂) they seek each other, above 0 (◂▸) they avoid each other; 0 is chance, 1 is
        never.
        {pairs.some(({ limited }) => limited) ? ' * held at what is possible.' : ''} {trust}
      </p>
    </div>
  );
}

/** 'seek-3' … 'chance' … 'avoid-3' */
function toneOf(value: number): string {
  const strength = steps.filter((step) => Math.abs(value) >= step).length;
  if (strength === 0) return 'chance';
  return `${value < 0 ? 'seek' : 'avoid'}-${strength}`;
}
