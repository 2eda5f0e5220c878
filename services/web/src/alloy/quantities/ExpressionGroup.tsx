import { expressionsOf } from '@tiegel/contract/terms';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { knownOfKept } from '../inSearch/knownOfKept.ts';
import type { AlloyState } from '../state/alloyState.ts';

/** The search's own expressions: name and formula as they were typed, and the value of this alloy. */
export function ExpressionGroup({ alloy: { search, values, prices } }: { alloy: AlloyState }) {
  if (search === null) return null;
  const { lets = {} } = search.specification;
  const expressions = expressionsOf(search);
  if (expressions.length === 0) return null;
  return (
    <div>
      <h3 className="quiet small">Expressions of the search</h3>
      <ul className="quantities">
        {expressions.map(({ id, name, unit, decimals }) => (
          <li key={id} className="expression">
            <span className="expression-name">{name}</span>
            <span className="quantity-value">
              {formatNumber(values[id], decimals)}{' '}
              <span className="quantity-unit">{unitText(unit, (search.prices ?? prices)?.currency)}</span>
            </span>
            <span className="expression-formula">
              <code>{lets[id]}</code>
              <span className="quiet">{whyNone(values[id])}</span>
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function whyNone(value: number | null | undefined): string {
  if (value === undefined) return ` ${knownOfKept}`;
  return value === null ? ' has no value here' : '';
}
