import { unitText } from '../server/lookup.ts';
import type { QuantityView } from '../server/types.ts';
import { type Draft, type LimitRow, limitRow } from './draft.ts';
import { FaultText } from './FaultText.tsx';
import { fieldId } from './faultsContext.ts';
import { NumberField } from './NumberField.tsx';
import { QuantitySelect } from './QuantitySelect.tsx';
import type { ChangeDraft } from './useDraft.ts';

interface LimitsSectionProps {
  draft: Draft;
  change: ChangeDraft;
  quantities: readonly QuantityView[];
  currency: string | undefined;
}

/** What a composition must meet to pass. */
export function LimitsSection({ draft, change, quantities, currency }: LimitsSectionProps) {
  const setRow = (key: string, part: Partial<LimitRow>) =>
    change(({ limits }) => ({ limits: limits.map((row) => (row.key === key ? { ...row, ...part } : row)) }));
  const add = () => {
    const used = new Set(draft.limits.map(({ quantity }) => quantity));
    const next = quantities.find(({ id }) => !used.has(id)) ?? quantities[0];
    if (next) change(({ limits }) => ({ limits: [...limits, limitRow(next.id)] }));
  };

  return (
    <section aria-labelledby="limits-head" className="ask-section">
      <h2 id="limits-head">Limits</h2>
      <p className="quiet">A composition passes when it meets all of them; a value on a limit meets it.</p>
      <div id={fieldId('/limits')} tabIndex={-1}>
        <FaultText pointer="/limits" />
      </div>
      <ol className="ask-rows">
        {draft.limits.map((row, index) => {
          const quantity = quantities.find(({ id }) => id === row.quantity);
          const pointer = `/limits/${index}`;
          const unit = unitText(quantity?.unit ?? '', currency);
          return (
            <li key={row.key} id={fieldId(pointer)} tabIndex={-1}>
              <div className="ask-line">
                <QuantitySelect
                  pointer={`${pointer}/quantity`}
                  label={`Limit ${index + 1}: quantity`}
                  value={row.quantity}
                  quantities={quantities}
                  onChange={(id) => setRow(row.key, { quantity: id })}
                />
                <NumberField
                  pointer={`${pointer}/min`}
                  label="at least"
                  value={row.min}
                  onChange={(min) => setRow(row.key, { min })}
                />
                <NumberField
                  pointer={`${pointer}/max`}
                  label="at most"
                  unit={unit}
                  value={row.max}
                  onChange={(max) => setRow(row.key, { max })}
                />
                <button
                  type="button"
                  className="button-plain"
                  aria-label={`Take out the limit on ${quantity?.name ?? row.quantity}`}
                  onClick={() =>
                    change(({ limits }) => ({ limits: limits.filter(({ key }) => key !== row.key) }))
                  }
                >
                  ×
                </button>
              </div>
              <FaultText pointer={pointer} />
              {row.min.trim() === '' && row.max.trim() === '' ? (
                <p className="small quiet">Not used until it has a minimum, a maximum or both.</p>
              ) : null}
              {quantity?.caution ? <p className="small quiet">{quantity.caution}</p> : null}
            </li>
          );
        })}
      </ol>
      <button type="button" onClick={add}>
        Add a limit
      </button>
    </section>
  );
}
