import { generalCaution } from '@tiegel/elements';
import { useState } from 'react';
import { elementProperties } from '../periodic/elementProperties.ts';
import { familyTints } from '../periodic/families.ts';
import { markSigns } from '../periodic/marks.ts';
import { PeriodicTable } from '../periodic/PeriodicTable.tsx';
import { unitText } from '../server/lookup.ts';
import type { ElementView, PricesView } from '../server/types.ts';
import { type Draft, type Mark, marked } from './draft.ts';
import { FaultText } from './FaultText.tsx';
import { fieldId } from './faultsContext.ts';
import { PoolTable } from './PoolTable.tsx';
import { PriceNote } from './PriceNote.tsx';
import type { ChangeDraft } from './useDraft.ts';

const clickWords: Record<Mark, string> = { pool: 'picks', require: 'requires', forbid: 'forbids' };
const legend = [...new Map(Object.entries(familyTints).map(([family, tint]) => [tint, family]))];

interface ElementsSectionProps {
  draft: Draft;
  change: ChangeDraft;
  elements: readonly ElementView[];
  prices: PricesView;
}

/** Which elements an alloy may, must or must not have, and the bounds of each. */
export function ElementsSection({ draft, change, elements, prices }: ElementsSectionProps) {
  const [shown, setShown] = useState('meltingTemperature');
  const [clickMark, setClickMark] = useState<Mark>('pool');
  const properties = elementProperties(elements);
  const property = properties.find(({ id }) => id === shown) ?? properties[0];
  const currency = prices?.currency;

  const onMark = (symbol: string, mark: Mark | null) =>
    change(({ marks }) => {
      const { [symbol]: _, ...others } = marks;
      return { marks: mark === null ? others : { ...others, [symbol]: mark } };
    });

  return (
    <section aria-labelledby="elements-head" className="ask-section">
      <h2 id="elements-head" tabIndex={-1}>
        Elements
      </h2>
      <div id={fieldId('/elements')} tabIndex={-1}>
        <FaultText pointer="/elements" />
      </div>
      <PeriodicTable
        elements={elements}
        marks={draft.marks}
        property={property}
        unit={property ? unitText(property.unit, currency) : ''}
        clickMark={clickMark}
        onMark={onMark}
      >
        <fieldset className="row">
          <legend className="unseen">What a click on an element does</legend>
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
        <p className="legend" aria-hidden="true">
          {legend.map(([tint, family]) => (
            <span key={tint} className={`tint-${tint}`}>
              {tint === 'nonmetal' ? 'nonmetal' : family}
            </span>
          ))}
        </p>
      </PeriodicTable>
      {marked(draft, 'pool', 'require', 'forbid').length === 0 ? (
        <p className="read quiet">
          Nothing is picked yet. Pick at least as many elements as an alloy shall have, or start from the
          demonstration above.
        </p>
      ) : (
        <>
          <PoolTable draft={draft} change={change} elements={elements} currency={currency} onMark={onMark} />
          <p className="small quiet read-small">{generalCaution}</p>
        </>
      )}
      <PriceNote prices={prices} />
    </section>
  );
}
