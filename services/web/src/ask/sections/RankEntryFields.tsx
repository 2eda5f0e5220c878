import type { QuantityView } from '@tiegel/contract';
import { unitText } from '../../server/lookup.ts';
import type { RankRow } from '../draft/draft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { QuantitySelect } from '../fields/QuantitySelect.tsx';
import { WishPlot } from '../sample/WishPlot.tsx';

interface RankEntryFieldsProps {
  row: RankRow;
  pointer: string;
  /** from 1, for the names of the fields */
  number: number;
  combined: boolean;
  quantities: readonly QuantityView[];
  currency: string | undefined;
  /** its anchors may be proposed: nobody has emptied them */
  unanchored: boolean;
  onAnchored: () => void;
  onChange: (part: Partial<RankRow>) => void;
  onRemove: () => void;
}

const preferences = { high: 'as high as possible', low: 'as low as possible', target: 'near' };

/** One wish: a quantity, which way is better, and, where several are combined, from where to where. */
export function RankEntryFields(props: RankEntryFieldsProps) {
  const { row, pointer, number, combined, quantities, currency, onChange, onRemove } = props;
  const { unanchored, onAnchored } = props;
  const quantity = quantities.find(({ id }) => id === row.quantity);
  const unit = unitText(quantity?.unit ?? '', currency);
  const field = (key: keyof RankRow & string, label: string, place: string, more: object = {}) => (
    <NumberField
      pointer={`${pointer}/${place}`}
      label={label}
      value={row[key]}
      onChange={(text) => onChange({ [key]: text })}
      {...more}
    />
  );

  return (
    <>
      <div className="ask-line">
        <QuantitySelect
          pointer={`${pointer}/quantity`}
          label={`Ranking ${number}: quantity`}
          value={row.quantity}
          quantities={quantities}
          onChange={(id) => onChange({ quantity: id })}
        />
        <select
          aria-label={`Ranking ${number}: what is better`}
          value={row.prefer}
          onChange={(event) => onChange({ prefer: event.target.value as RankRow['prefer'] })}
        >
          {Object.entries(preferences).map(([prefer, words]) => (
            <option key={prefer} value={prefer}>
              {words}
            </option>
          ))}
        </select>
        {row.prefer === 'target' ? field('target', 'target', 'prefer/target', { unit }) : null}
        <button
          type="button"
          className="button-plain"
          aria-label={`Take out the ranking by ${quantity?.name ?? row.quantity}`}
          onClick={onRemove}
        >
          ×
        </button>
      </div>
      {combined ? (
        <div className="ask-line ask-anchors">
          {row.prefer === 'high' && field('from', 'worth 0 up to', 'from', { unit })}
          {row.prefer === 'high' && field('to', 'worth 1 from', 'to', { unit })}
          {row.prefer === 'low' && field('from', 'worth 1 up to', 'from', { unit })}
          {row.prefer === 'low' && field('to', 'worth 0 from', 'to', { unit })}
          {row.prefer === 'target' && field('within', 'worth 0 when off by', 'within', { unit })}
          {field('weight', 'weight', 'weight', { placeholder: '1' })}
          {field('shape', 'shape', 'shape', { placeholder: '1' })}
        </div>
      ) : null}
      {combined && quantity ? (
        <WishPlot
          row={row}
          quantity={quantity}
          unit={unit}
          unanchored={unanchored}
          onAnchored={onAnchored}
          onChange={onChange}
        />
      ) : null}
      <FaultText pointer={pointer} />
      {quantity?.caution ? (
        <p className={row.quantity === 'omega' ? 'note note-warning' : 'small quiet'}>{quantity.caution}</p>
      ) : null}
    </>
  );
}
