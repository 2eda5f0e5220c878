import { steps } from '@tiegel/contract/terms';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { parseNumber } from '../../numbers/parseNumber.ts';
import type { Bounds, Draft } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { NumberField } from '../fields/NumberField.tsx';

/** How many elements an alloy has, and the shares that are tried. */
export function SharesSection({ draft, change }: { draft: Draft; change: ChangeDraft }) {
  const setComponents = (part: Partial<Bounds>) =>
    change(({ components }) => ({ components: { ...components, ...part } }));
  const setBounds = (part: Partial<Bounds>) => change(({ bounds }) => ({ bounds: { ...bounds, ...part } }));
  const same = (before: Bounds, min: string) =>
    // A smallest number above the largest would be a fault at once: the largest goes along.
    numberIn(min) > numberIn(before.max) ? { min, max: min } : { min };

  return (
    <section aria-labelledby="shares-head" className="ask-section">
      <h2 id="shares-head">Number and shares</h2>
      <div className="ask-line" id={fieldId('/components')} tabIndex={-1}>
        <NumberField
          pointer="/components/min"
          label="Elements in an alloy: from"
          value={draft.components.min}
          onChange={(min) => setComponents(same(draft.components, min))}
        />
        <NumberField
          pointer="/components/max"
          label="to"
          value={draft.components.max}
          onChange={(max) => setComponents({ max })}
        />
        <FaultText pointer="/components" />
      </div>
      <fieldset className="ask-line" id={fieldId('/fractions')} tabIndex={-1}>
        <legend className="unseen">Shares</legend>
        <label className="choice">
          <input
            type="radio"
            name="amounts"
            checked={draft.amounts === 'grid'}
            onChange={() => change({ amounts: 'grid' })}
          />
          Every share on a grid
        </label>
        <label className="choice">
          <input
            type="radio"
            name="amounts"
            checked={draft.amounts === 'equimolar'}
            onChange={() => change({ amounts: 'equimolar' })}
          />
          Equal shares only (equimolar)
        </label>
        <FaultText pointer="/fractions" />
      </fieldset>
      {draft.amounts === 'grid' ? (
        <div className="ask-line">
          <span className="number-field">
            <label htmlFor={fieldId('/fractions/step')}>Step of the grid</label>
            <select
              id={fieldId('/fractions/step')}
              value={draft.step}
              onChange={(event) => change({ step: Number(event.target.value) })}
            >
              {steps.map((step) => (
                <option key={step} value={step}>
                  {formatNumber(step, Number.isInteger(step) ? 0 : String(step).length - 2)}
                </option>
              ))}
            </select>
            <span className="quiet">at.%</span>
            <FaultText pointer="/fractions/step" />
          </span>
          <NumberField
            pointer="/fractions/min"
            label="Each element that is there: at least"
            unit="at.%"
            value={draft.bounds.min}
            placeholder={String(draft.step)}
            onChange={(min) => setBounds({ min })}
          />
          <NumberField
            pointer="/fractions/max"
            label="at most"
            unit="at.%"
            value={draft.bounds.max}
            placeholder="100"
            onChange={(max) => setBounds({ max })}
          />
        </div>
      ) : null}
      {draft.amounts === 'grid' ? (
        <p className="quiet">
          Bounds of a single element are set in its line of the table above and go before these.
        </p>
      ) : null}
    </section>
  );
}

function numberIn(text: string): number {
  const parsed = parseNumber(text, { whole: true });
  return 'value' in parsed ? (parsed.value ?? Number.NaN) : Number.NaN;
}
