import { parseAlloy } from '@tiegel/elements';
import { valuesOf } from '@tiegel/screening';
import { useMemo } from 'react';
import { factsOf } from '../alloy/state/factsOf.ts';
import { useAlloyData } from '../alloy/state/useAlloyData.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import { unitText } from '../server/lookup.ts';

/** What people compare when they agree on a list. */
const shown = [
  'density',
  'meltingTemperature',
  'mixingEnthalpy',
  'sizeMismatch',
  'valenceElectronConcentration',
  'singlePhaseEstimate',
  'cost',
];

/** A few quantities of an alloy in a line. */
export function EntryNumbers({ entry }: { entry: string }) {
  const { data } = useAlloyData();
  const values = useMemo(() => {
    if (data === null) return null;
    const composition = parseAlloy(entry);
    return valuesOf(composition, factsOf(Object.keys(composition), data.elements, data.pairs), shown);
  }, [data, entry]);
  // As many lines as there will be: what stands below keeps its place.
  if (data === null || values === null) {
    return (
      <div className="short-numbers" aria-hidden="true">
        {shown.map((id) => (
          <div key={id}>{'\u00a0'}</div>
        ))}
      </div>
    );
  }
  return (
    <dl className="short-numbers">
      {shown.map((id) => {
        const quantity = data.quantities.find((one) => one.id === id);
        if (quantity === undefined) return null;
        return (
          <div key={id}>
            <dt title={quantity.meaning}>{quantity.name}</dt>
            <dd>
              {formatNumber(values[id] ?? null, quantity.decimals)}{' '}
              {unitText(quantity.unit, data.prices?.currency)}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
