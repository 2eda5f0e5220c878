import { type ChargeSheet, decimalsOf } from '@tiegel/charge';
import { formatNumber } from '../numbers/formatNumber.ts';

/** What to weigh, in the order of charging; on paper with a box to tick and room for what the balance showed. */
export function SheetLines({ sheet }: { sheet: ChargeSheet }) {
  const { lines, order, total, resolution, cost, currency } = sheet;
  const decimals = decimalsOf(resolution);
  const ordered = order.map((name) => lines.find(({ material }) => material === name)!);
  return (
    <section aria-labelledby="sheet-lines-head" className="sheet-lines">
      <h3 id="sheet-lines-head">To weigh, in the order of charging</h3>
      <table className="plain-table">
        <thead>
          <tr>
            <th scope="col">Material</th>
            <th scope="col" className="number">
              Mass, g
            </th>
            <th scope="col" className="print-cell">
              Weighed, g
            </th>
            <th scope="col" className="number sheet-melting">
              Melts at, K
            </th>
            <th scope="col" className="number screen-cell">
              Cost{currency ? `, ${currency}` : ''}
            </th>
          </tr>
        </thead>
        <tbody>
          {ordered.map(({ material, mass, melting, cost: of, element, contains }, at) => (
            <tr key={material}>
              <th scope="row">
                <span className="print-inline sheet-box" aria-hidden="true" />
                <span className="quiet sheet-place">{at + 1}</span> {material}
                {element === null ? (
                  <span className="quiet plain small sheet-contains"> {contentsInWords(contains)}</span>
                ) : null}
              </th>
              <td className="number sheet-mass">{formatNumber(mass, decimals)}</td>
              <td className="print-cell sheet-blank" />
              <td className="number sheet-melting">
                {melting.estimated ? '≈ ' : ''}
                {formatNumber(melting.temperature, 0)}
              </td>
              <td className="number screen-cell">{formatNumber(of, 2)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">In all</th>
            <td className="number sheet-mass">{formatNumber(total, decimals)}</td>
            <td className="print-cell sheet-blank" />
            <td className="sheet-melting" />
            <td className="number screen-cell">{formatNumber(cost, 2)}</td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function contentsInWords(contains: Readonly<Record<string, number>>): string {
  const shares = Object.entries(contains).map(([symbol, percent]) => `${symbol} ${formatNumber(percent, 1)}`);
  return `${shares.join(', ')} wt.%`;
}
