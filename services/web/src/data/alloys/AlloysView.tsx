import type { KnownAlloyView } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { Link } from 'wouter';
import { alloyAddress } from '../../alloy/entry/alloyAddress.ts';
import { useSettled } from '../../ask/useSettled.ts';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount } from '../../numbers/formatNumber.ts';
import { ImportsInForce } from '../imports/ImportsInForce.tsx';
import { DataRows } from '../table/DataRows.tsx';
import { useAddress } from '../useAddress.ts';
import { useOrder } from '../useOrder.ts';
import { AlloyFilterBar } from './AlloyFilterBar.tsx';
import { alloyColumns } from './alloyColumns.tsx';
import { askedOf, readAlloyFilters, strangeWords } from './alloyFilters.ts';
import { useAlloys } from './useAlloys.ts';

/** Alloys with what was seen of them: from publications, and one's own that were brought in. */
export function AlloysView() {
  useTitle('Published alloys');
  const [address, change] = useAddress();
  const filters = readAlloyFilters(address);
  const selection = useSettled(askedOf(filters, symbols).toString());
  const { order, direction, onOrder } = useOrder('');
  const { rows, total, error, refetch, stale, onEnd } = useAlloys(selection, order, direction);
  const strange = strangeWords(filters, symbols);
  return (
    <section className="column" aria-labelledby="alloys-head">
      <h2 id="alloys-head">Published alloys</h2>
      <p className="read">
        Alloys that somebody made, with the phases that were reported. The list is a selection: that an alloy
        is not in it does not make it new.
      </p>
      <ImportsInForce kind="alloys" />
      <AlloyFilterBar filters={filters} change={change} />
      {strange.length > 0 ? (
        <p className="note" role="status">
          {strange.map((word) => `“${word}”`).join(', ')} {strange.length === 1 ? 'is' : 'are'} no symbol of
          an element with data and not asked for. Write symbols, such as Fe Ni.
        </p>
      ) : null}
      {error && !rows ? (
        <Failed error={error} what="The published alloys" onRetry={() => void refetch()} />
      ) : null}
      {error && rows ? (
        <Failed error={error} what="What is asked for" onRetry={() => void refetch()} />
      ) : null}
      {!rows && !error ? <Waiting what="Fetching the alloys" /> : null}
      {rows ? (
        <div className={stale ? 'column look-stale' : 'column'} aria-busy={stale}>
          <p className="quiet" role="status">
            {total === 1 ? '1 alloy.' : `${formatCount(total)} alloys.`}
          </p>
          {rows.length === 0 ? (
            <p className="note row">
              No alloy here meets all of this.
              <button
                type="button"
                onClick={() => change({ text: null, has: null, without: null, phase: null, own: null })}
              >
                Show all alloys
              </button>
            </p>
          ) : (
            <DataRows
              caption="Published alloys"
              columns={alloyColumns}
              rows={rows}
              total={total}
              addressOf={({ composition }) => alloyAddress(composition)}
              keyOf={keyOf}
              selection={selection}
              order={order}
              direction={direction}
              onOrder={onOrder}
              onCard={5}
              onEnd={onEnd}
            />
          )}
        </div>
      ) : null}
      <p className="small quiet read-small">
        Published alloys: Borg et al., Expanded dataset of mechanical properties and observed phases of
        multi-principal element alloys, Sci. Data 7 (2020) 430, doi:10.1038/s41597-020-00768-9; labels as
        their publications report them. How often rules were right on them:{' '}
        <Link href="/evidence">Evidence</Link>.
      </p>
    </section>
  );
}

function keyOf({ composition, name, process, import: from, doi }: KnownAlloyView): string {
  return JSON.stringify([composition, name, process, from, doi]);
}
