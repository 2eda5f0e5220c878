import { elementOf } from '@tiegel/elements';
import { NumberField } from '../ask/fields/NumberField.tsx';
import { entryText } from '../numbers/parseNumber.ts';
import type { PricesView } from '../server/types.ts';
import { emptyElement } from './chargeDraft.ts';
import { currencyOf } from './chargeOf.ts';
import type { ChargeForm } from './useChargeDraft.ts';

interface ElementMaterialsProps {
  symbols: readonly string[];
  form: ChargeForm;
  prices: PricesView;
}

/** Each element of the alloy as it is bought: purity, price, and what of it evaporates. */
export function ElementMaterials({ symbols, form, prices }: ElementMaterialsProps) {
  const currency = currencyOf(form.draft, prices) ?? 'currency';
  const listed = prices?.currency === currency ? prices : null;
  return (
    <table className="plain-table charge-materials">
      <thead>
        <tr>
          <th scope="col">Element</th>
          <th scope="col">Purity, wt.%</th>
          <th scope="col">Price, {currency}/kg</th>
          <th scope="col">Expected loss, wt.%</th>
          <th scope="col">On the shelf</th>
        </tr>
      </thead>
      <tbody>
        {symbols.map((symbol) => {
          const row = form.draft.elements[symbol] ?? emptyElement;
          const name = elementOf(symbol)?.name ?? symbol;
          const write = (part: Partial<typeof row>) => form.changeElement(symbol, part);
          return (
            <tr key={symbol}>
              <th scope="row">
                {symbol} <span className="quiet plain">{name.toLowerCase()}</span>
              </th>
              <td>
                <NumberField
                  pointer={`/elements/${symbol}/purity`}
                  label={<Label of={name} what="purity, wt.%" />}
                  labelUnseen
                  value={row.purity}
                  placeholder="100"
                  onChange={(purity) => write({ purity })}
                />
              </td>
              <td>
                <NumberField
                  pointer={`/elements/${symbol}/price`}
                  label={<Label of={name} what={`price, ${currency}/kg`} />}
                  labelUnseen
                  value={row.price}
                  placeholder={entryText(listed?.prices[symbol]?.pricePerKilogram) || 'unknown'}
                  onChange={(price) => write({ price })}
                />
              </td>
              <td>
                <NumberField
                  pointer={`/elements/${symbol}/loss`}
                  label={<Label of={name} what="expected loss, wt.%" />}
                  labelUnseen
                  value={row.loss}
                  placeholder="0"
                  onChange={(loss) => write({ loss })}
                />
              </td>
              <td className="charge-absent">
                <label className="choice">
                  <input
                    type="checkbox"
                    checked={!row.absent}
                    onChange={(event) => write({ absent: !event.target.checked })}
                  />
                  as a metal<span className="unseen">, {name.toLowerCase()}</span>
                </label>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** Read with the name of the element; on a phone, where its heading is near, shown without it. */
function Label({ of, what }: { of: string; what: string }) {
  return (
    <>
      <span className="unseen">{of}: </span>
      {what}
    </>
  );
}
