import { useMemo } from 'react';
import { extentOf } from '../../plot/extentOf.ts';
import type { ScatterAxis } from '../../plot/scatterData.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { QuantityChoice } from '../QuantityChoice.tsx';
import type { Wish } from './plotState.ts';

interface AxisChoiceProps {
  label: string;
  quantities: readonly ShownQuantity[];
  quantity: ShownQuantity;
  wish: Wish;
  /** null while its values are not known */
  axis: ScatterAxis | null;
  onQuantity: (id: string) => void;
  onWish: (wish: Wish) => void;
  onLogarithmic: (logarithmic: boolean) => void;
}

/** One axis of a scatter: its quantity, which values are better, and whether it is logarithmic. */
export function AxisChoice(props: AxisChoiceProps) {
  const { label, quantities, quantity, wish, axis, onQuantity, onWish, onLogarithmic } = props;
  const above0 = useMemo(() => (axis ? (extentOf(axis.values)?.[0] ?? 0) > 0 : true), [axis]);
  return (
    <fieldset className="axis-choice">
      <legend className="unseen">
        {label}: {quantity.name}
      </legend>
      <QuantityChoice label={label} value={quantity.id} quantities={quantities} onChange={onQuantity} />
      <select
        aria-label={`Better values of ${quantity.name}`}
        value={wish}
        onChange={(event) => onWish(event.target.value as Wish)}
      >
        <option value="none">neither side is better</option>
        <option value="low">low is better</option>
        <option value="high">high is better</option>
      </select>
      <label className="choice">
        <input
          type="checkbox"
          checked={axis?.logarithmic === true && above0}
          disabled={!above0}
          onChange={(event) => onLogarithmic(event.target.checked)}
        />
        <span title={above0 ? undefined : 'Only where every value is above 0'}>logarithmic</span>
      </label>
    </fieldset>
  );
}
