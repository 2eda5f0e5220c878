import type { MeltEntry, MeltWithHistory } from '@tiegel/contract';
import { formatInstant } from '../numbers/formatInstant.ts';

const names: Partial<Record<keyof MeltEntry, string>> = {
  weighed: 'masses',
  charge: 'charge sheet',
  loss: 'losses',
  date: 'day',
  methods: 'methods of observation',
};

/** Every version of a melt, and what each changed. */
export function History({ history }: Pick<MeltWithHistory, 'history'>) {
  return (
    <details className="screen-only">
      <summary>
        History: {history.length} {history.length === 1 ? 'version' : 'versions'}
      </summary>
      <ol className="melt-history">
        {history.map(({ version, at, by, entry }, place) => (
          <li key={version}>
            Version {version}, {formatInstant(at)}
            {by === null ? '' : `, ${by}`}: {changesIn(entry, history[place + 1]?.entry)}
          </li>
        ))}
      </ol>
    </details>
  );
}

function changesIn(entry: MeltEntry, before: MeltEntry | undefined): string {
  if (before === undefined) return 'recorded.';
  const keys = [...new Set([...Object.keys(before), ...Object.keys(entry)])] as (keyof MeltEntry)[];
  const changed = keys.filter((key) => JSON.stringify(entry[key]) !== JSON.stringify(before[key]));
  if (changed.length === 0) return 'nothing changed.';
  return `${changed.map((key) => `${names[key] ?? key} ${inWords(before[key])} → ${inWords(entry[key])}`).join('; ')}.`;
}

function inWords(value: unknown): string {
  if (value === null || value === undefined || value === '') return 'nothing';
  if (Array.isArray(value)) {
    return value
      .map((one) => (typeof one === 'object' ? `${one.material} ${one.mass} g` : String(one)))
      .join(', ');
  }
  return typeof value === 'object' ? Object.values(value).join(', ') : String(value);
}
