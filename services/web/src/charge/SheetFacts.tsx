import { type ChargeSheet, decimalsOf } from '@tiegel/charge';
import { formatNumber } from '../numbers/formatNumber.ts';

/** What a batch comes to, in four numbers. */
export function SheetFacts({ sheet }: { sheet: ChargeSheet }) {
  const { total, expected, cost, currency, window, resolution } = sheet;
  const decimals = decimalsOf(resolution);
  const { lowestBoiling, highestMelting, gap } = window;
  return (
    <dl className="sheet-facts">
      <Fact name="Weighed in all" value={`${formatNumber(total, decimals)} g`} />
      <Fact name="Ingot, about" value={`${formatNumber(expected.ingot, Math.min(2, decimals))} g`} />
      <Fact
        name="Cost of the batch"
        value={cost === null ? 'not known' : `${formatNumber(cost, 2)} ${currency ?? ''}`.trim()}
      />
      {gap === null || highestMelting === null ? null : (
        <Fact
          name="Boiling above melting"
          value={`${formatNumber(gap, 0)} K`}
          more={`${lowestBoiling.element} boils at ${formatNumber(lowestBoiling.temperature, 0)} K, ${highestMelting.element} melts at ${formatNumber(highestMelting.temperature, 0)} K`}
        />
      )}
    </dl>
  );
}

function Fact({ name, value, more }: { name: string; value: string; more?: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <b>{value}</b>
        {more ? <span className="quiet small"> {more}</span> : null}
      </dd>
    </div>
  );
}
