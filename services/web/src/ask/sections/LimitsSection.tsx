import type { QuantityView } from '@tiegel/contract';
import { type Draft, type LimitRow, limitRow } from '../draft/draft.ts';
import { nextQuantity } from '../draft/nextQuantity.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { SampleSummary } from '../sample/SampleSummary.tsx';
import { LimitFields } from './LimitFields.tsx';

interface LimitsSectionProps {
  draft: Draft;
  change: ChangeDraft;
  quantities: readonly QuantityView[];
  currency: string | undefined;
}

/** What a composition must meet to pass, each limit on the distribution of its quantity. */
export function LimitsSection({ draft, change, quantities, currency }: LimitsSectionProps) {
  const setRow = (key: string, part: Partial<LimitRow>) =>
    change(({ limits }) => ({ limits: limits.map((row) => (row.key === key ? { ...row, ...part } : row)) }));
  const next = nextQuantity(quantities, draft.limits);

  return (
    <section aria-labelledby="limits-head" className="ask-section">
      <h2 id="limits-head">Limits</h2>
      <p className="quiet read-small">
        A composition passes when it meets all of them; a value on a limit meets it. Drag the ends on the
        distribution of the quantity, or type them.
      </p>
      <div id={fieldId('/limits')} tabIndex={-1}>
        <FaultText pointer="/limits" />
      </div>
      <ol className="ask-rows">
        {draft.limits.map((row, index) => (
          <li key={row.key} id={fieldId(`/limits/${index}`)} tabIndex={-1}>
            <LimitFields
              row={row}
              index={index}
              quantities={quantities}
              currency={currency}
              onChange={(part) => setRow(row.key, part)}
              onRemove={() =>
                change(({ limits }) => ({ limits: limits.filter(({ key }) => key !== row.key) }))
              }
            />
          </li>
        ))}
      </ol>
      {next ? (
        <button
          type="button"
          onClick={() => change(({ limits }) => ({ limits: [...limits, limitRow(next)] }))}
        >
          Add a limit
        </button>
      ) : null}
      <SampleSummary />
    </section>
  );
}
