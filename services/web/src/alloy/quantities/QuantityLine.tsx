import type { QuantityView, WeighingError } from '@tiegel/contract';
import { quantities as known, missingFor, missingInWords } from '@tiegel/screening';
import { useState } from 'react';
import { formatInterval } from '../../numbers/formatInterval.ts';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { Notation } from '../../words/Notation.tsx';
import { conditionsInWords } from '../conditions/conditionsInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { isGroundless } from './isGroundless.ts';
import { OwnPairSources } from './OwnPairSources.tsx';
import { QuantityOrigin } from './QuantityOrigin.tsx';
import { sourceInWords } from './sourceInWords.ts';
import { TypicalStrip } from './TypicalStrip.tsx';
import { typicalInWords } from './typicalInWords.ts';

interface QuantityLineProps {
  alloy: AlloyState;
  quantity: QuantityView;
  weighed: WeighingError['quantities'][string] | undefined;
}

/** One quantity: its value among the published alloys; opened: everything that it rests on. */
export function QuantityLine({ alloy, quantity, weighed }: QuantityLineProps) {
  const [open, setOpen] = useState(false);
  const { name, symbol, unit, decimals, meaning, caution, notation, source, needs, id } = quantity;
  const groundless = isGroundless(quantity, alloy.explanation);
  const value = groundless ? null : (alloy.values[id] ?? null);
  const typical = alloy.typical?.[id] ?? null;
  const printed = unitText(unit, alloy.prices?.currency);
  return (
    <details className="quantity" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span className="quantity-symbol">
          <Notation text={symbol} />
        </span>
        <span className="quantity-name">{name}</span>
        <span className="quantity-value">
          {groundless ? 'no basis' : formatNumber(value, decimals)}{' '}
          <span className="quantity-unit">{printed}</span>
        </span>
        <span className="quantity-strip">
          {typical && value !== null ? <TypicalStrip value={value} typical={typical} /> : null}
        </span>
        <span className="quantity-meaning">
          {groundless ? farFromAll : value === null ? whyNone(alloy, id) : meaning}
        </span>
      </summary>
      <div className="quantity-words">
        <p className="formula">
          <Notation text={notation} />
        </p>
        {value === null ? <p>{meaning}</p> : null}
        {caution ? (
          <p>
            <b className="caution-word">Caution</b> {caution}
          </p>
        ) : null}
        <p className="quiet">{sourceInWords(source)}</p>
        {needs.pairs.length > 0 ? <OwnPairSources alloy={alloy} /> : null}
        {needs.conditions.length > 0 ? (
          <p>Computed for {conditionsInWords(alloy.conditions, needs.conditions)}.</p>
        ) : null}
        {typical && value !== null ? (
          <p>{typicalInWords(value, typical, (one) => `${formatNumber(one, decimals)} ${printed}`.trim())}</p>
        ) : null}
        {weighed && weighed.least !== null && weighed.greatest !== null ? (
          <p>
            {weighed.least === weighed.greatest
              ? 'Weighing does not move it'
              : `Weighing makes of it ${formatInterval(weighed.least, weighed.greatest, decimals)} ${printed}`.trim()}
            {weighed.mayLack ? ', or nothing: the value exists on one side of a border alone' : ''}.
          </p>
        ) : null}
        {open ? <QuantityOrigin alloy={alloy} quantity={quantity} /> : null}
      </div>
    </details>
  );
}

const farFromAll =
  'The formula gives a number, but the alloy lies too far from every published one for it to mean anything.';

/** Why there is no value: what is not known, or that the formula has none here. */
function whyNone({ composition, facts, prices }: AlloyState, id: string): string {
  if (!known.some((quantity) => quantity.id === id)) return 'No value.';
  const missing = missingInWords(missingFor(id, composition, facts));
  if (missing === '') return 'No value: the formula has none for this composition.';
  return `No value: ${missing} ${prices === null || missing.startsWith('price') ? 'is not in the price list' : 'is not known'}.`;
}
