import type { QuantityView } from '@tiegel/contract';
import { unitText } from '../../server/lookup.ts';
import type { LimitRow } from '../draft/draft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { QuantitySelect } from '../fields/QuantitySelect.tsx';
import { LimitPlot } from '../sample/LimitPlot.tsx';

interface LimitFieldsProps {
  row: LimitRow;
  /** its place among the limits */
  index: number;
  quantities: readonly QuantityView[];
  currency: string | undefined;
  onChange: (part: Partial<LimitRow>) => void;
  onRemove: () => void;
}

/** One limit: a quantity, its least and its greatest value, and where they lie on its distribution. */
export function LimitFields({ row, index, quantities, currency, onChange, onRemove }: LimitFieldsProps) {
  const quantity = quantities.find(({ id }) => id === row.quantity);
  const pointer = `/limits/${index}`;
  const unit = unitText(quantity?.unit ?? '', currency);
  return (
    <>
      <div className="ask-line limit-line">
        <QuantitySelect
          pointer={`${pointer}/quantity`}
          label={`Limit ${index + 1}: quantity`}
          value={row.quantity}
          quantities={quantities}
          onChange={(id) => onChange({ quantity: id })}
        />
        <NumberField
          pointer={`${pointer}/min`}
          label="at least"
          value={row.min}
          onChange={(min) => onChange({ min })}
        />
        <NumberField
          pointer={`${pointer}/max`}
          label="at most"
          unit={unit}
          value={row.max}
          onChange={(max) => onChange({ max })}
        />
        <button
          type="button"
          className="button-plain"
          aria-label={`Take out the limit on ${quantity?.name ?? row.quantity}`}
          onClick={onRemove}
        >
          ×
        </button>
      </div>
      <FaultText pointer={pointer} />
      {quantity ? (
        <LimitPlot row={row} index={index} quantity={quantity} unit={unit} onChange={onChange} />
      ) : null}
      {row.min.trim() === '' && row.max.trim() === '' ? (
        <p className="small quiet">Not used until it has a minimum, a maximum or both.</p>
      ) : null}
      {quantity?.caution ? <p className="small quiet">{quantity.caution}</p> : null}
    </>
  );
}
