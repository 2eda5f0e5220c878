import type { QuantityView } from '@tiegel/contract';
import { Link } from 'wouter';
import type { ElementView } from '../../server/types.ts';
import { type Draft, type LetRow, letRow } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FaultText } from '../faults/FaultText.tsx';
import { fieldId } from '../faults/faultsContext.ts';
import { LetFields } from './LetFields.tsx';
import './own.css';
import { newLetName } from './newLetName.ts';
import { renamed } from './renamed.ts';
import type { OwnQuantities } from './useOwnQuantities.ts';

interface LetsSectionProps {
  draft: Draft;
  change: ChangeDraft;
  /** those of the registry */
  quantities: readonly QuantityView[];
  own: OwnQuantities;
  elements: readonly ElementView[];
  currency: string | undefined;
}

/** Figures of merit of one's own: limits and ranking can use them like any quantity. */
export function LetsSection({ draft, change, quantities, own, elements, currency }: LetsSectionProps) {
  const ids = quantities.map(({ id }) => id);
  const setText = (row: LetRow, text: string) =>
    change(({ lets }) => ({ lets: lets.map((one) => (one.key === row.key ? { ...one, text } : one)) }));
  return (
    <details className="ask-section" open={draft.lets.length > 0 || undefined}>
      <summary>
        <h2>Expressions of one’s own</h2>
      </summary>
      <div className="own-content">
        <p className="quiet read-small">
          A figure of merit made of quantities, by a name: limits and ranking then offer it. Signs: + - * / ^
          and brackets; functions: min, max, abs, sqrt, exp, ln; decimals with a point. What is added or
          compared must have one unit; a typed number may carry any. Values of elements that the program does
          not have can be <Link href="/data/imports/new?kind=column">brought in as a column</Link>.
        </p>
        <div id={fieldId('/lets')} tabIndex={-1}>
          <FaultText pointer="/lets" />
        </div>
        <ol className="ask-rows">
          {draft.lets.map((row, index) => (
            <li key={row.key}>
              <LetFields
                row={row}
                index={index}
                read={own.read[index]}
                reader={own.reader}
                offered={[...quantities, ...own.views.filter(({ id }) => before(draft.lets, index).has(id))]}
                elements={elements}
                conditions={draft.conditions}
                currency={currency}
                onName={(name) => change((now) => renamed(now, now.lets[index]!, name, ids))}
                onText={(text) => setText(row, text)}
                onRemove={() => change(({ lets }) => ({ lets: lets.filter(({ key }) => key !== row.key) }))}
              />
            </li>
          ))}
        </ol>
        <button
          type="button"
          onClick={() =>
            change(({ lets }) => ({
              lets: [...lets, letRow(newLetName([...ids, ...lets.map(({ name }) => name)]))],
            }))
          }
        >
          Write an expression
        </button>
      </div>
    </details>
  );
}

/** Names of the expressions that stand before one: the only ones that it may name. */
function before(rows: readonly LetRow[], index: number): Set<string> {
  return new Set(rows.slice(0, index).map(({ name }) => name.trim()));
}
