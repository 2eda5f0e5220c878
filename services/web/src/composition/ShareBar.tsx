import './shareBar.css';
import { tones } from './tones.ts';

/** The colour of an element's share, the same on every page. */
export function toneOf(symbol: string): string {
  return `var(--share-${tones[symbol] ?? 0})`;
}

/**
 * A composition as one bar: shares from left to right, symbols alphabetical. Decoration beside
 * the numbers, hence hidden from screen readers.
 */
export function ShareBar({
  composition,
  labelled = false,
}: {
  composition: Record<string, number>;
  labelled?: boolean;
}) {
  const shares = Object.entries(composition).sort(([a], [b]) => (a < b ? -1 : 1));
  return (
    <span className={labelled ? 'share-bar share-bar-labelled' : 'share-bar'} aria-hidden="true">
      {shares.map(([symbol, share]) => (
        <span key={symbol} style={{ flexGrow: share, ['--tone' as string]: toneOf(symbol) }}>
          {labelled ? <b>{symbol}</b> : null}
        </span>
      ))}
    </span>
  );
}
