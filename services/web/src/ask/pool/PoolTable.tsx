import { elementOf } from '@tiegel/elements';
import { Fragment } from 'react';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { markSigns } from '../../periodic/marks.ts';
import type { ElementView } from '../../server/types.ts';
import { type Bounds, type Draft, type Mark, marked } from '../draft/draft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { useFaultsAt } from '../faults/faultsContext.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { Hazards } from './Hazards.tsx';
import { type Lack, lackInWords } from './lackingFor.ts';
import './poolTable.css';
import type { ChangeDraft } from '../draft/useDraft.ts';

interface PoolTableProps {
  draft: Draft;
  change: ChangeDraft;
  elements: readonly ElementView[];
  /** values that the search needs and elements lack */
  lacking: ReadonlyMap<string, readonly Lack[]>;
  currency: string | undefined;
  onMark: (symbol: string, mark: Mark | null) => void;
}

const noBounds: Bounds = { min: '', max: '' };

/** The elements that are marked, a line each: part in the alloy, own bounds, price, hazards. */
export function PoolTable({ draft, change, elements, lacking, currency, onMark }: PoolTableProps) {
  const onGrid = draft.amounts === 'grid';
  const bySymbol = new Map(elements.map((element) => [element.symbol, element]));
  const setBounds = (symbol: string, part: Partial<Bounds>) =>
    change(({ each }) => ({ each: { ...each, [symbol]: { ...noBounds, ...each[symbol], ...part } } }));

  return (
    <div className="pool-frame">
      <table className="plain-table pool">
        <caption className="unseen">Elements of the search</caption>
        <thead>
          <tr>
            <th scope="col">Element</th>
            <th scope="col">In an alloy</th>
            {onGrid ? <th scope="col">At least, at.%</th> : null}
            {onGrid ? <th scope="col">At most, at.%</th> : null}
            <th scope="col" className="number">
              Price{currency ? `, ${currency}/kg` : ''}
            </th>
            <th scope="col">In handling</th>
            <th>
              <span className="unseen">Take out</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {marked(draft, 'pool', 'require', 'forbid').map((symbol) => {
            const mark = draft.marks[symbol]!;
            const facts = bySymbol.get(symbol);
            const own = draft.each[symbol] ?? noBounds;
            const pointer = `/fractions/each/${symbol}`;
            const name = elementOf(symbol)?.name ?? symbol;
            return (
              <Fragment key={symbol}>
                <tr className={`pool-${mark}`}>
                  <th scope="row">
                    <span className="pool-symbol">{symbol}</span>{' '}
                    <span className="pool-name">{name.toLowerCase()}</span>
                  </th>
                  <td className="pool-part">
                    <select
                      aria-label={`${name} in an alloy`}
                      value={mark}
                      onChange={(event) => onMark(symbol, event.target.value as Mark)}
                    >
                      <option value="pool">✓ may be</option>
                      <option value="require">+ must be</option>
                      <option value="forbid">− must not be</option>
                    </select>
                  </td>
                  {onGrid
                    ? (['min', 'max'] as const).map((edge) => (
                        <td
                          key={edge}
                          className={`pool-${edge}`}
                          data-label={edge === 'min' ? 'at least' : 'at most'}
                        >
                          {mark === 'forbid' ? null : (
                            <NumberField
                              pointer={`${pointer}/${edge}`}
                              label={`${name} ${edge === 'min' ? 'at least' : 'at most'}, at.%`}
                              labelUnseen
                              faultElsewhere
                              value={own[edge]}
                              placeholder={draft.bounds[edge]}
                              onChange={(text) => setBounds(symbol, { [edge]: text })}
                            />
                          )}
                        </td>
                      ))
                    : null}
                  <td className="number pool-price" data-label="price">
                    {formatNumber(facts?.price, 2)}
                    {currency && facts?.price != null ? (
                      <span className="pool-unit">{currency}/kg</span>
                    ) : null}
                  </td>
                  <td className="pool-hazards">
                    {lacking.has(symbol) && mark !== 'forbid' ? (
                      <span className="pool-lack">
                        <b aria-hidden="true">! </b>
                        {lackInWords(lacking.get(symbol)!)}
                      </span>
                    ) : null}
                    <Hazards hazards={facts?.hazards ?? []} />
                  </td>
                  <td className="pool-out">
                    <button
                      type="button"
                      className="button-plain"
                      aria-label={`Take out ${name}`}
                      title={`${markSigns[mark].word}: take out`}
                      onClick={() => onMark(symbol, null)}
                    >
                      ×
                    </button>
                  </td>
                </tr>
                <BoundFaults pointer={pointer} />
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** What is wrong with an element's bounds, in a line of the table's full width. */
function BoundFaults({ pointer }: { pointer: string }) {
  const places = [pointer, `${pointer}/min`, `${pointer}/max`];
  const faults = [useFaultsAt(places[0]!), useFaultsAt(places[1]!), useFaultsAt(places[2]!)];
  if (faults.every((one) => one.faults.length === 0)) return null;
  return (
    <tr className="pool-faults">
      <td colSpan={7}>
        {places.map((place) => (
          <FaultText key={place} pointer={place} />
        ))}
      </td>
    </tr>
  );
}
