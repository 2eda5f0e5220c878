import type { ChargeSheet } from '@tiegel/charge';
import { toneOf } from '../composition/ShareBar.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';

/** The composition that the rounded masses give, against the target. */
export function SheetShares({ sheet }: { sheet: ChargeSheet }) {
  const { composition, resulting, rounding } = sheet;
  const decimals = decimalsThatTell(Math.max(...Object.values(rounding)));
  return (
    <section aria-labelledby="sheet-shares-head">
      <h3 id="sheet-shares-head">What comes of it, at.%</h3>
      <table className="plain-table">
        <thead>
          <tr>
            <th scope="col">Element</th>
            <th scope="col" className="number">
              Target
            </th>
            <th scope="col" className="number">
              Resulting
            </th>
            <th scope="col" className="number">
              Off
            </th>
          </tr>
        </thead>
        <tbody>
          {Object.keys(composition)
            .sort()
            .map((symbol) => (
              <tr key={symbol}>
                <th scope="row">
                  <span
                    className="swatch"
                    aria-hidden="true"
                    style={{ ['--tone' as string]: toneOf(symbol) }}
                  />
                  {symbol}
                </th>
                <td className="number">{formatNumber(composition[symbol], decimals)}</td>
                <td className="number">{formatNumber(resulting[symbol], decimals)}</td>
                <td className="number">{difference(resulting[symbol]! - composition[symbol]!, decimals)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </section>
  );
}

/** Decimals at which rounding (at.%) shows, from 2 to 5. */
function decimalsThatTell(rounding: number): number {
  return Math.min(5, Math.max(2, Math.ceil(-Math.log10(rounding)) + 1));
}

function difference(number: number, decimals: number): string {
  const text = formatNumber(number, decimals);
  return /[1-9]/.test(text) && !text.startsWith('−') ? `+${text}` : text;
}
