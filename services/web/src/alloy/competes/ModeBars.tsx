import { formatNumber } from '../../numbers/formatNumber.ts';

interface ModeBarsProps {
  /** by symbol, of unit length: entries of one sign go one way */
  mode: Record<string, number>;
  what: string;
  one: string;
  other: string;
}

/** Which elements part from which, as bars to the right and to the left. */
export function ModeBars({ mode, what, one, other }: ModeBarsProps) {
  const entries = Object.entries(mode).sort(([, a], [, b]) => b - a);
  if (entries.length === 0) return null;
  return (
    <table className="mode">
      <caption className="small quiet">
        {what}: above 0 {one}, below 0 {other}
      </caption>
      <tbody>
        {entries.map(([symbol, entry]) => (
          <tr key={symbol}>
            <th scope="row">{symbol}</th>
            <td className="number">{formatNumber(entry, 2)}</td>
            <td aria-hidden="true" className="mode-bars">
              <span
                className={entry < 0 ? 'mode-bar mode-left' : 'mode-bar'}
                style={{ inlineSize: `${50 * Math.abs(entry)}%` }}
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
