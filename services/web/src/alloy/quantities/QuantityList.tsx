import type { QuantityView, WeighingError } from '@tiegel/contract';
import { askedFirst } from '../../look/columns.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { ExpressionGroup } from './ExpressionGroup.tsx';
import { QuantityLine } from './QuantityLine.tsx';
import './quantities.css';

interface QuantityListProps {
  alloy: AlloyState;
  weighing: WeighingError | null;
}

/** Every quantity, a line each; a line opens to formula, inputs, source and sensitivities. What the search asks for comes first. */
export function QuantityList({ alloy, weighing }: QuantityListProps) {
  const { quantities, search } = alloy;
  const { asked, others } = search
    ? askedFirst(search.specification, quantities)
    : { asked: [], others: quantities };
  const groups: { head: string; members: readonly QuantityView[] }[] = [
    { head: 'Asked for', members: asked },
    { head: asked.length > 0 ? 'Everything else' : '', members: others },
  ].filter(({ members }) => members.length > 0);
  return (
    <section aria-labelledby="quantities">
      <h2 id="quantities">Quantities</h2>
      <p className="quiet read-small screen-only">
        Each line opens to the formula, what went into it, where it comes from, and what moves it. The bar
        shows the middle half of the published alloys, the mark this alloy.
      </p>
      <ExpressionGroup alloy={alloy} />
      {groups.map(({ head, members }) => (
        <div key={head}>
          {head === '' ? null : <h3 className="quiet small">{head}</h3>}
          <ul className="quantities">
            {members.map((quantity) => (
              <li key={quantity.id}>
                <QuantityLine alloy={alloy} quantity={quantity} weighed={weighing?.quantities[quantity.id]} />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
