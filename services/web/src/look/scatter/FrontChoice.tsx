import type { SearchSpecification } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { lookupIn } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import type { Filters } from '../filters/filters.ts';

interface FrontChoiceProps {
  specification: SearchSpecification;
  quantities: readonly ShownQuantity[];
  filters: Filters;
  onChange: (filters: Filters) => void;
}

/** Shows the members of the Pareto front alone; only where the search asked for a front. */
export function FrontChoice({ specification, quantities, filters, onChange }: FrontChoiceProps) {
  const { front } = specification;
  if (!front) return null;
  const lookup = lookupIn(quantities, undefined);
  const aims = front.map(
    ({ quantity, prefer }) => `${prefer} ${nameInSentence(quantity, lookup(quantity).name)}`,
  );
  const { front: _, ...others } = filters;
  return (
    <label className="choice">
      <input
        type="checkbox"
        checked={filters.front === true}
        onChange={(event) => onChange(event.target.checked ? { ...others, front: true } : others)}
      />
      <span>
        Only the Pareto front of {aims.slice(0, -1).join(', ')} and {aims.at(-1)} (marked ◇)
      </span>
    </label>
  );
}
