import { quantities as known, sensitivities } from '@tiegel/screening';
import { useDeferredValue, useMemo, useState } from 'react';
import { WideContent } from '../../frame/WideContent.tsx';
import { unitText } from '../../server/lookup.ts';
import { Notation } from '../../words/Notation.tsx';
import type { AlloyState } from '../state/alloyState.ts';
import { changeInWords } from './changeInWords.ts';

/** What one at.% more of each element, at the expense of the others in proportion, does to every quantity: one table, worked out when it is opened. */
export function Sensitivities({ alloy }: { alloy: AlloyState }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)} className="screen-only">
      <summary>What one at.% more of each element does to every quantity</summary>
      {open ? <SensitivityTable alloy={alloy} /> : null}
    </details>
  );
}

function SensitivityTable({ alloy }: { alloy: AlloyState }) {
  const { quantities, prices } = alloy;
  const { composition, facts, conditions, symbols } = useDeferredValue(alloy);
  const rates = useMemo(
    () => new Map(known.map(({ id }) => [id, sensitivities(id, composition, facts, conditions)])),
    [composition, facts, conditions],
  );
  return (
    <WideContent label="One at.% more">
      <table className="plain-table sensitivities">
        <thead>
          <tr>
            <th scope="col">Quantity</th>
            {symbols.map((symbol) => (
              <th key={symbol} scope="col" className="number">
                +1 at.% {symbol}
              </th>
            ))}
            <th scope="col">Unit</th>
          </tr>
        </thead>
        <tbody>
          {quantities.map(({ id, name, symbol: sign, unit, decimals }) => (
            <tr key={id}>
              <th scope="row" className="plain">
                {name} <Notation text={sign} />
              </th>
              {symbols.map((symbol) => (
                <td key={symbol} className="number">
                  {changeInWords(rates.get(id)?.[symbol], decimals)}
                </td>
              ))}
              <td className="quiet">{unitText(unit, prices?.currency)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideContent>
  );
}
