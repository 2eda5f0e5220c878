import type { QuantityView } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { conditionNames, conditions } from '@tiegel/screening';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { entryText, parseNumber } from '../../numbers/parseNumber.ts';
import type { Draft } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { NumberField } from '../fields/NumberField.tsx';

interface ConditionsSectionProps {
  draft: Draft;
  change: ChangeDraft;
  quantities: readonly QuantityView[];
}

/** What a search assumes beside composition: shown where something chosen computes with it, or where it was set. */
export function ConditionsSection({ draft, change, quantities }: ConditionsSectionProps) {
  const chosen = new Set([...draft.limits, ...draft.rank, ...draft.front].map(({ quantity }) => quantity));
  const users = (name: string) =>
    quantities.filter(({ id, needs }) => chosen.has(id) && needs.conditions.includes(name));
  const shown = conditionNames.filter((name) => draft.conditions[name] || users(name).length > 0);
  if (shown.length === 0) return null;
  return (
    <section aria-labelledby="conditions-head" className="ask-section">
      <h2 id="conditions-head">Conditions</h2>
      <p className="quiet read-small">
        What is chosen above depends on these; an empty field has the default.
      </p>
      <div id={fieldId('/conditions')} tabIndex={-1}>
        <FaultText pointer="/conditions" />
      </div>
      {shown.map((name) => {
        const { label, unit, default: usual } = conditions[name];
        const text = draft.conditions[name] ?? '';
        return (
          <div key={name} className="ask-line">
            <NumberField
              pointer={`/conditions/${name}`}
              label={label}
              unit={unit}
              value={text}
              placeholder={usual === null ? 'none' : entryText(usual)}
              onChange={(next) => change((now) => ({ conditions: { ...now.conditions, [name]: next } }))}
            />
            {unit === 'K' ? <Celsius text={text} usual={usual} /> : null}
            <span className="small quiet">{usersInWords(users(name))}</span>
          </div>
        );
      })}
    </section>
  );
}

/** A temperature in °C, as furnaces show it. */
function Celsius({ text, usual }: { text: string; usual: number | null }) {
  const parsed = parseNumber(text);
  const kelvin = 'value' in parsed ? (parsed.value ?? usual) : null;
  return kelvin === null ? null : <span className="quiet">= {formatNumber(kelvin - 273.15, 0)} °C</span>;
}

function usersInWords(users: readonly QuantityView[]): string {
  if (users.length === 0) return 'Nothing that is chosen depends on it.';
  return `For ${users.map(({ id, name }) => nameInSentence(id, name)).join(', ')}.`;
}
