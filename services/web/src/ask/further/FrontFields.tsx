import type { QuantityView } from '@tiegel/contract';
import { type Draft, type FrontRow, frontRow } from '../draft/draft.ts';
import { nextQuantity } from '../draft/nextQuantity.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { QuantitySelect } from '../fields/QuantitySelect.tsx';

/** A front weighs so many aims at most. */
const mostAims = 4;

interface FrontFieldsProps {
  draft: Draft;
  change: ChangeDraft;
  quantities: readonly QuantityView[];
}

/** The aims whose best compromises are kept beside the best of the ranking. */
export function FrontFields({ draft, change, quantities }: FrontFieldsProps) {
  const setRow = (key: string, part: Partial<FrontRow>) =>
    change(({ front }) => ({ front: front.map((row) => (row.key === key ? { ...row, ...part } : row)) }));
  // One aim alone is no compromise: the first two come together.
  const add = () =>
    change(({ front, rank, limits }) => {
      const rows = [...front];
      for (let more = front.length === 0 ? 2 : 1; more > 0; more -= 1) {
        const next = nextQuantity(quantities, rows, [...rank, ...limits]);
        const ranked = rank.find(({ quantity }) => quantity === next)?.prefer;
        if (next) rows.push(frontRow(next, { prefer: ranked === 'high' ? 'high' : 'low' }));
      }
      return { front: rows };
    });
  return (
    <>
      <p className="quiet read-small">
        Besides the best of the ranking, every composition is kept that no other one beats: none is as good in
        all of these aims and better in one (the Pareto front). It shows what one aim costs in another.
      </p>
      <div id={fieldId('/front')} tabIndex={-1}>
        <FaultText pointer="/front" />
      </div>
      <ol className="ask-rows">
        {draft.front.map((row, index) => (
          <li key={row.key} id={fieldId(`/front/${index}`)} tabIndex={-1}>
            <div className="ask-line">
              <QuantitySelect
                pointer={`/front/${index}/quantity`}
                label={`Aim ${index + 1}: quantity`}
                value={row.quantity}
                quantities={quantities}
                onChange={(id) => setRow(row.key, { quantity: id })}
              />
              <select
                aria-label={`Aim ${index + 1}: what is better`}
                value={row.prefer}
                onChange={(event) => setRow(row.key, { prefer: event.target.value as FrontRow['prefer'] })}
              >
                <option value="high">as high as possible</option>
                <option value="low">as low as possible</option>
              </select>
              <button
                type="button"
                className="button-plain"
                aria-label={`Take out aim ${index + 1}`}
                onClick={() => change(({ front }) => ({ front: front.filter(({ key }) => key !== row.key) }))}
              >
                ×
              </button>
            </div>
            <FaultText pointer={`/front/${index}`} />
          </li>
        ))}
      </ol>
      {draft.front.length < mostAims ? (
        <button type="button" onClick={add}>
          {draft.front.length === 0 ? 'Weigh two aims' : 'Add an aim'}
        </button>
      ) : null}
    </>
  );
}
