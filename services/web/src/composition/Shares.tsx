import { formatNumber } from '../numbers/formatNumber.ts';
import './shares.css';

/** A composition as it is written everywhere: symbols alphabetical, at.% to the grid's step, in places of equal width. */
export function Shares({ composition, decimals }: { composition: Record<string, number>; decimals: number }) {
  const symbols = Object.keys(composition).sort();
  return (
    <span className="shares">
      {symbols.map((symbol) => (
        <span key={symbol} className={decimals > 0 ? 'share share-wide' : 'share'}>
          <span className="share-symbol">{symbol}</span>
          <span className="share-amount">{formatNumber(composition[symbol], decimals)}</span>{' '}
        </span>
      ))}
    </span>
  );
}
