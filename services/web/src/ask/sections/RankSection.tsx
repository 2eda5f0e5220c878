import type { QuantityView } from '@tiegel/contract';
import { useState } from 'react';
import { type Draft, letRow, type RankRow, rankRow } from '../draft/draft.ts';
import { nextQuantity } from '../draft/nextQuantity.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId, focusField } from '../faults/faultsContext.ts';
import { newLetName } from '../own/newLetName.ts';
import { RankEntryFields } from './RankEntryFields.tsx';

interface RankSectionProps {
  draft: Draft;
  change: ChangeDraft;
  quantities: readonly QuantityView[];
  currency: string | undefined;
}

/** What is best: one quantity, or several combined. */
export function RankSection({ draft, change, quantities, currency }: RankSectionProps) {
  const combined = draft.rank.length > 1;
  // Where several are combined, their anchors are proposed from the sample; whoever empties one means it.
  const [unanchored, setUnanchored] = useState<ReadonlySet<string>>(new Set());
  const setRow = (key: string, part: Partial<RankRow>) =>
    change(({ rank }) => ({ rank: rank.map((row) => (row.key === key ? { ...row, ...part } : row)) }));
  const propose = (...keys: string[]) => setUnanchored((before) => new Set([...before, ...keys]));
  const add = () => {
    const next = nextQuantity(quantities, draft.rank, draft.limits);
    if (!next) return;
    const row = rankRow(next);
    propose(row.key, ...draft.rank.map(({ key }) => key));
    change(({ rank }) => ({ rank: [...rank, row] }));
  };
  // In place of a single quantity, beside several; the formula is what is written next.
  const addOwn = () => {
    const name = newLetName(quantities.map(({ id }) => id));
    const row = rankRow(name, { prefer: 'high' });
    propose(row.key);
    change(({ rank, lets }) => ({
      lets: [...lets, letRow(name)],
      rank: [...(rank.length > 1 ? rank : []), row],
    }));
    requestAnimationFrame(() => focusField(`/lets/${draft.lets.length}`));
  };

  return (
    <section aria-labelledby="rank-head" className="ask-section">
      <h2 id="rank-head">Ranking</h2>
      <p className="quiet read-small">
        {combined
          ? 'Each wish is worth between 0 and 1; the score of a composition is their weighted geometric mean, so a wish that is worth nothing cannot be bought with the others (Derringer & Suich 1980). The line over the distribution is what each value is worth: drag its ends. Coloured: what meets all limits.'
          : 'What passes is put in order by one quantity, or by several combined.'}
      </p>
      <div id={fieldId('/rank')} tabIndex={-1}>
        <FaultText pointer="/rank" />
      </div>
      <ol className="ask-rows">
        {draft.rank.map((row, index) => (
          <li key={row.key} id={fieldId(`/rank/${index}`)} tabIndex={-1}>
            <RankEntryFields
              row={row}
              pointer={`/rank/${index}`}
              number={index + 1}
              combined={combined}
              quantities={quantities}
              currency={currency}
              unanchored={unanchored.has(row.key)}
              onAnchored={() =>
                setUnanchored((before) => new Set([...before].filter((key) => key !== row.key)))
              }
              onChange={(part) => {
                if (part.prefer !== undefined || part.quantity !== undefined) propose(row.key);
                setRow(row.key, part);
              }}
              onRemove={() => change(({ rank }) => ({ rank: rank.filter(({ key }) => key !== row.key) }))}
            />
          </li>
        ))}
      </ol>
      <p className="row">
        <button type="button" onClick={add}>
          {draft.rank.length === 0 ? 'Rank by a quantity' : 'Combine with another quantity'}
        </button>
        <button type="button" onClick={addOwn}>
          {draft.rank.length < 2
            ? 'Rank by an expression of one’s own'
            : 'Combine with an expression of one’s own'}
        </button>
      </p>
    </section>
  );
}
