import { elementOf } from '@tiegel/elements';
import './shareBar.css';

/** The 12 tones in an order in which neighbours of the periodic table lie far apart. */
const toneStep = 5;

/** The tone of an element's share: the same on every page, and no element's own colour. */
export function toneOf(symbol: string): string {
  const atomicNumber = elementOf(symbol)?.atomicNumber ?? 0;
  return `var(--share-${(atomicNumber * toneStep) % 12})`;
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
