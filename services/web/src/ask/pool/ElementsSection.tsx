import type { QuantityView } from '@tiegel/contract';
import { generalCaution } from '@tiegel/elements';
import { useCallback, useMemo, useState } from 'react';
import { elementProperties } from '../../periodic/elementProperties.ts';
import { markSigns } from '../../periodic/marks.ts';
import { PeriodicTable } from '../../periodic/PeriodicTable.tsx';
import { unitText } from '../../server/lookup.ts';
import type { ElementView, PricesView } from '../../server/types.ts';
import { type Draft, type Mark, marked } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { FamilyButtons } from './FamilyButtons.tsx';
import { lackingFor } from './lackingFor.ts';
import { markedTogether } from './markedTogether.ts';
import { PoolChoice } from './PoolChoice.tsx';
import { PoolTable } from './PoolTable.tsx';
import { PriceNote } from './PriceNote.tsx';

const clickWords: Record<Mark, string> = { pool: 'picks', require: 'requires', forbid: 'forbids' };

interface ElementsSectionProps {
  draft: Draft;
  change: ChangeDraft;
  replace: (draft: Draft) => void;
  elements: readonly ElementView[];
  quantities: readonly QuantityView[];
  prices: PricesView;
}

/** Which elements an alloy may, must or must not have, and the bounds of each. */
export function ElementsSection(props: ElementsSectionProps) {
  const { draft, change, replace, elements, quantities, prices } = props;
  const [shown, setShown] = useState('meltingTemperature');
  const [clickMark, setClickMark] = useState<Mark>('pool');
  const properties = useMemo(() => elementProperties(elements), [elements]);
  const property = properties.find(({ id }) => id === shown) ?? properties[0];
  const currency = prices?.currency;
  const used = [...draft.limits, ...draft.rank, ...draft.front].map(({ quantity }) => quantity);
  const usedIds = [...new Set(used)].sort().join();
  const lacking = useMemo(() => {
    const ids = usedIds.split(',');
    return lackingFor(
      quantities.filter(({ id }) => ids.includes(id)),
      elements,
    );
  }, [usedIds, quantities, elements]);

  const onMark = useCallback(
    (symbol: string, mark: Mark | null) =>
      change(({ marks }) => {
        const { [symbol]: _, ...others } = marks;
        return { marks: mark === null ? others : { ...others, [symbol]: mark } };
      }),
    [change],
  );
  const onMarkTogether = useCallback(
    (symbols: readonly string[], mark: Mark) =>
      change(({ marks }) => ({ marks: markedTogether(marks, symbols, mark) })),
    [change],
  );

  // The table is as large as the rest of the page: nothing of it is drawn anew while a limit is dragged.
  const choices = useMemo(
    () => (
      <>
        <fieldset className="row">
          <legend className="unseen">What a click on an element, a group or a family does</legend>
          <span aria-hidden="true">A click</span>
          {(Object.keys(markSigns) as Mark[]).map((mark) => (
            <label key={mark} className="choice">
              <input
                type="radio"
                name="click"
                checked={clickMark === mark}
                onChange={() => setClickMark(mark)}
              />
              {clickWords[mark]} <b aria-hidden="true">{markSigns[mark].sign}</b>
            </label>
          ))}
        </fieldset>
        <label className="row">
          On the cards
          <select value={property?.id} onChange={(event) => setShown(event.target.value)}>
            {properties.map(({ id, name, unit }) => (
              <option key={id} value={id}>
                {name}
                {unit ? `, ${unitText(unit, currency)}` : ''}
              </option>
            ))}
          </select>
        </label>
        <FamilyButtons
          elements={elements}
          marks={draft.marks}
          does={clickWords[clickMark]}
          onChoose={(symbols) => onMarkTogether(symbols, clickMark)}
        />
      </>
    ),
    [clickMark, currency, draft.marks, elements, onMarkTogether, properties, property],
  );

  return (
    <section aria-labelledby="elements-head" className="ask-section">
      <h2 id="elements-head" tabIndex={-1}>
        Elements
      </h2>
      <div id={fieldId('/elements')} tabIndex={-1}>
        <FaultText pointer="/elements" />
      </div>
      <PoolChoice draft={draft} onTake={({ marks, each }) => replace({ ...draft, marks, each })} />
      <PeriodicTable
        elements={elements}
        marks={draft.marks}
        property={property}
        unit={property ? unitText(property.unit, currency) : ''}
        clickMark={clickMark}
        clickWord={clickWords[clickMark]}
        lacking={lacking}
        onMark={onMark}
        onMarkTogether={onMarkTogether}
      >
        {choices}
      </PeriodicTable>
      {marked(draft, 'pool', 'require', 'forbid').length === 0 ? (
        <p className="read quiet">
          Nothing is picked yet. Pick at least as many elements as an alloy shall have, or start from the
          demonstration above.
        </p>
      ) : (
        <>
          <PoolTable
            draft={draft}
            change={change}
            elements={elements}
            lacking={lacking}
            currency={currency}
            onMark={onMark}
          />
          <p className="small quiet read-small">{generalCaution}</p>
        </>
      )}
      <PriceNote prices={prices} />
    </section>
  );
}
