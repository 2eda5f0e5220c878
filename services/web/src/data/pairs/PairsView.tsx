import { useQuery } from '@tanstack/react-query';
import { pairColumns, sources } from '@tiegel/elements';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useNarrow } from '../../frame/useNarrow.ts';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { inLocale } from '../../numbers/inLocale.ts';
import { elementBySymbol } from '../../periodic/allElements.ts';
import { pairsQuery } from '../../server/queries.ts';
import { SearchField } from '../SearchField.tsx';
import { useAddress } from '../useAddress.ts';
import { PairList } from './PairList.tsx';
import { PairMatrix } from './PairMatrix.tsx';
import { chosenElements, pairsAmong } from './pairChoice.ts';

const [{ meaning, source }] = pairColumns;

/** The enthalpies of mixing of element pairs, as a matrix or as a list. */
export function PairsView() {
  useTitle('Pairs');
  const [address, change] = useAddress();
  const { data, error, refetch } = useQuery(pairsQuery);
  const narrow = useNarrow();
  const text = address.get('element') ?? '';
  const show = address.get('show') ?? (narrow ? 'list' : 'matrix');
  const known = useMemo(() => symbolsIn(data ?? []), [data]);
  const { chosen, strange } = useMemo(() => chosenElements(known, text), [known, text]);
  const pairs = useMemo(() => pairsAmong(data ?? [], chosen), [data, chosen]);
  if (error && !data)
    return <Failed error={error} what="The pair enthalpies" onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Fetching the pairs" />;
  const own = data.filter((pair) => pair.import !== null).length;
  return (
    <section className="column" aria-labelledby="pairs-head">
      <h2 id="pairs-head">Enthalpies of mixing of pairs</h2>
      <p className="read">{meaning}</p>
      <div className="row data-tools">
        <SearchField
          label="Of the elements"
          value={text}
          placeholder="all; or Fe; or Al Co Cr Fe Ni"
          onChange={(next) => change({ element: next, at: null })}
        />
        <fieldset className="row">
          <legend className="unseen">Shown as</legend>
          {(['matrix', 'list'] as const).map((one) => (
            <label key={one} className="choice">
              <input type="radio" name="show" checked={show === one} onChange={() => change({ show: one })} />
              {one === 'matrix' ? 'Matrix' : 'List'}
            </label>
          ))}
        </fieldset>
      </div>
      {strange.length > 0 ? (
        <p className="note" role="status">
          {strange.map((word) => `“${word}”`).join(', ')} {strange.length === 1 ? 'is' : 'are'} no symbol of
          an element with pairs here. Write symbols, such as Al Ni Ti.
        </p>
      ) : null}
      {show === 'matrix' ? (
        <PairMatrix pairs={data} symbols={chosen.length > 1 ? chosen : known} />
      ) : (
        <PairList
          pairs={pairs}
          selection={chosen.join()}
          partnersOf={chosen.length === 1 ? chosen[0]! : null}
        />
      )}
      <p className="small quiet read-small">
        Source: {inLocale(sources[source].text)}
        {own > 0 ? ` ${own} of the values are your own, marked *.` : ''}{' '}
        <Link href="/data/imports/new?kind=pairs">Bring in values of your own</Link>
      </p>
    </section>
  );
}

/** The elements of which there are pairs, by atomic number. */
function symbolsIn(pairs: readonly { a: string; b: string }[]): string[] {
  const place = (symbol: string) => elementBySymbol.get(symbol)?.atomicNumber ?? 0;
  return [...new Set(pairs.flatMap(({ a, b }) => [a, b]))].sort((one, other) => place(one) - place(other));
}
