import { toneOf } from '../composition/ShareBar.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';

interface AsWeighedProps {
  composition: Readonly<Record<string, number>>;
  nominal: Readonly<Record<string, number>> | null;
}

/** The composition that was weighed, beside the one that was meant. */
export function AsWeighed({ composition, nominal }: AsWeighedProps) {
  const symbols = [...new Set([...Object.keys(composition), ...Object.keys(nominal ?? {})])].sort();
  return (
    <table className="plain-table melt-weighed">
      <caption className="quiet small">
        Composition as weighed, after the expected losses, at.%
        {nominal ? '; it takes the place of the nominal one' : ''}
      </caption>
      <thead>
        <tr>
          <th scope="col">Element</th>
          <th scope="col" className="number">
            As weighed
          </th>
          {nominal ? (
            <>
              <th scope="col" className="number">
                Nominal
              </th>
              <th scope="col" className="number">
                Off
              </th>
            </>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {symbols.map((symbol) => {
          const off = (composition[symbol] ?? 0) - (nominal?.[symbol] ?? 0);
          const shown = formatNumber(off, 3);
          return (
            <tr key={symbol}>
              <th scope="row">
                <span
                  className="swatch"
                  aria-hidden="true"
                  style={{ ['--tone' as string]: toneOf(symbol) }}
                />
                {symbol}
              </th>
              <td className="number">{formatNumber(composition[symbol] ?? 0, 3)}</td>
              {nominal ? (
                <>
                  <td className="number">{formatNumber(nominal[symbol] ?? 0, 3)}</td>
                  <td className="number">{/[1-9]/.test(shown) && off > 0 ? `+${shown}` : shown}</td>
                </>
              ) : null}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
