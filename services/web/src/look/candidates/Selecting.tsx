import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { formatCount, formatPercent } from '../../numbers/formatNumber.ts';
import { ordersQuery } from '../lookQueries.ts';
import type { ViewState } from '../viewState.ts';
import { selectingInWords } from './selectingInWords.ts';

interface SelectingProps {
  searchId: string;
  asked: ViewState;
  /** the view whose rows are shown meanwhile, null for none */
  before: ViewState | null;
  kept: number;
  nameOf: (id: string) => string;
  /** goes back to the view before */
  onStop: () => void;
}

/** So many rows are ordered or searched through before anybody has to wait. */
const manyRows = 50_000;

/** What the server does while rows are awaited, for how long already, and the way back. Appears only after a moment. */
export function Selecting({ searchId, asked, before, kept, nameOf, onStop }: SelectingProps) {
  const seconds = useSeconds();
  const ordered = asked.order !== 'rank';
  const { data: orders } = useQuery(ordersQuery(searchId, ordered));
  const share = orders?.find(
    ({ order, direction }) => order === asked.order && direction === asked.direction,
  )?.share;
  return (
    <div className="waiting selecting row">
      <p role="status">
        {selectingInWords(asked, before, kept, nameOf)} …{' '}
        {kept < manyRows ? null : (
          <span className="quiet">
            With so many rows the first time takes up to 5 s, later a moment.
            {before === null ? '' : ' The rows below are those of before.'}
          </span>
        )}
      </p>
      {share === undefined ? null : (
        <progress max={1} value={share} aria-label="Of the order">
          {formatPercent(share, 1)}
        </progress>
      )}
      {seconds < 1 ? null : <span aria-hidden="true">{formatCount(seconds)} s</span>}
      {before === null ? null : (
        <button type="button" onClick={onStop}>
          Keep what was shown
        </button>
      )}
    </div>
  );
}

/** Whole seconds since it stands on the page. */
function useSeconds(): number {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    const timer = setInterval(() => setSeconds((before) => before + 1), 1000);
    return () => clearInterval(timer);
  }, []);
  return seconds;
}
