import { useQuery } from '@tanstack/react-query';
import { unitText } from '../../server/lookup.ts';
import { lateQuantitiesQuery } from '../../server/queries.ts';
import { type Draft, type LimitRow, limitRow } from '../draft/draft.ts';
import { nextQuantity } from '../draft/nextQuantity.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { QuantitySelect } from '../fields/QuantitySelect.tsx';

const pointer = '/keptOnly';

/** Limits on what takes too long to be worked out for every composition: only the kept ones are tried. */
export function KeptOnlyFields({ draft, change }: { draft: Draft; change: ChangeDraft }) {
  const { data: late = [] } = useQuery(lateQuantitiesQuery);
  const setRow = (key: string, part: Partial<LimitRow>) =>
    change(({ keptOnly }) => ({
      keptOnly: keptOnly.map((row) => (row.key === key ? { ...row, ...part } : row)),
    }));
  const next = nextQuantity(late, draft.keptOnly);
  return (
    <>
      <p className="quiet read-small">
        These take too long to be worked out for every composition: they are worked out for the kept ones
        alone, and those that fail are taken out of them. Keep more above where many may fail.
      </p>
      <div id={fieldId(pointer)} tabIndex={-1}>
        <FaultText pointer={pointer} />
      </div>
      <ol className="ask-rows">
        {draft.keptOnly.map((row, index) => {
          const quantity = late.find(({ id }) => id === row.quantity);
          const place = `${pointer}/${index}`;
          return (
            <li key={row.key} id={fieldId(place)} tabIndex={-1}>
              <div className="ask-line limit-line">
                <QuantitySelect
                  pointer={`${place}/quantity`}
                  label={`Of the kept ones ${index + 1}: quantity`}
                  value={row.quantity}
                  quantities={late}
                  onChange={(id) => setRow(row.key, { quantity: id })}
                />
                <NumberField
                  pointer={`${place}/min`}
                  label="at least"
                  value={row.min}
                  onChange={(min) => setRow(row.key, { min })}
                />
                <NumberField
                  pointer={`${place}/max`}
                  label="at most"
                  unit={unitText(quantity?.unit ?? '', null)}
                  value={row.max}
                  onChange={(max) => setRow(row.key, { max })}
                />
                <button
                  type="button"
                  className="button-plain"
                  aria-label={`Take out the limit on ${quantity?.name ?? row.quantity}`}
                  onClick={() =>
                    change(({ keptOnly }) => ({ keptOnly: keptOnly.filter(({ key }) => key !== row.key) }))
                  }
                >
                  ×
                </button>
              </div>
              <FaultText pointer={place} />
              {row.min.trim() === '' && row.max.trim() === '' ? (
                <p className="small quiet">Not used until it has a minimum, a maximum or both.</p>
              ) : null}
              {quantity ? (
                <p className="small quiet read-small">
                  {quantity.meaning} {quantity.caution}
                </p>
              ) : null}
            </li>
          );
        })}
      </ol>
      {next ? (
        <button
          type="button"
          onClick={() => change(({ keptOnly }) => ({ keptOnly: [...keptOnly, limitRow(next)] }))}
        >
          Add a limit on the kept ones
        </button>
      ) : null}
    </>
  );
}
