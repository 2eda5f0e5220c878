import type { Substitute } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { useMemo, useState } from 'react';
import { WideContent } from '../../frame/WideContent.tsx';
import { unitText } from '../../server/lookup.ts';
import { Notation } from '../../words/Notation.tsx';
import { untestedInWords } from '../inSearch/untestedInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { columnsFor } from './columnsFor.ts';
import { type Order, ordered } from './ordered.ts';
import { SubstituteRow } from './SubstituteRow.tsx';

interface SubstituteTableProps {
  alloy: AlloyState;
  items: readonly Substitute[];
}

const first = 25;

/** Every partner and share in a line: limits, likeness, phases, and each quantity with its change. */
export function SubstituteTable({ alloy, items }: SubstituteTableProps) {
  const { quantities, search, prices, limits, space } = alloy;
  const [order, setOrder] = useState<Order>({ by: 'likeness', rising: true });
  const [all, setAll] = useState(false);
  const columns = useMemo(() => columnsFor(quantities, search?.specification ?? null), [quantities, search]);
  const sorted = useMemo(() => ordered(items, order), [items, order]);
  const shown = all ? sorted : sorted.slice(0, first);
  const head = (by: string, name: string) => (
    <button
      type="button"
      className="button-plain head-sort"
      onClick={() => setOrder({ by, rising: order.by === by ? !order.rising : true })}
    >
      <span>
        <Notation text={name} />
      </span>{' '}
      <span aria-hidden="true">{order.by === by ? (order.rising ? '▲' : '▼') : ''}</span>
    </button>
  );
  const sortOf = (by: string) => (order.by === by ? (order.rising ? 'ascending' : 'descending') : undefined);
  return (
    <>
      <p className="small quiet read-small">
        {items.length} replacements, for the whole share and for half of it; those that keep every limit{' '}
        {space === null ? '' : 'and lie in the space of the search '}first, then the most alike. Unlikeness is
        the mean change in units of the middle half of the published alloys, 0 to 1. Small print: the change
        against the alloy above.{untestedInWords(alloy)}
      </p>
      <WideContent label="The replacements as a table">
        <table className="plain-table substitutes cards">
          <thead>
            <tr>
              <th scope="col">Exchange</th>
              {limits.length > 0 || space !== null ? <th scope="col">Limits</th> : null}
              <th scope="col" className="number" aria-sort={sortOf('likeness')}>
                {head('likeness', 'Unlikeness')}
              </th>
              <th scope="col" className="number" aria-sort={sortOf('phase')}>
                {head('phase', 'Estimate of one solid solution')}
              </th>
              {columns.map(({ id, symbol, unit }) => (
                <th key={id} scope="col" className="number" aria-sort={sortOf(id)}>
                  {head(id, symbol)}
                  <span className="head-unit">{unitText(unit, prices?.currency)}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((item) => (
              <SubstituteRow
                key={formatComposition(item.composition) + Object.keys(item.by).join()}
                alloy={alloy}
                item={item}
                columns={columns}
              />
            ))}
          </tbody>
        </table>
      </WideContent>
      {sorted.length > first ? (
        <p>
          <button type="button" onClick={() => setAll(!all)}>
            {all ? `Show the first ${first}` : `Show all ${sorted.length}`}
          </button>
        </p>
      ) : null}
    </>
  );
}
