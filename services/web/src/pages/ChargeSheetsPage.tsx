import { useQuery } from '@tanstack/react-query';
import { spacedComposition } from '@tiegel/elements';
import { Link } from 'wouter';
import '../charge/charge.css';
import { sheetsQuery } from '../charge/savedSheet.ts';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { formatInstant } from '../numbers/formatInstant.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import { entryText } from '../numbers/parseNumber.ts';

/** Every charge sheet that was saved, the newest first. */
export function ChargeSheetsPage() {
  useTitle('Charge sheets');
  const { data, error, refetch, dataUpdatedAt } = useQuery(sheetsQuery);
  return (
    <div className="column">
      <div className="row">
        <h1>Charge sheets</h1>
        <Link href="/charge" className="button">
          Begin a new one
        </Link>
      </div>
      {error && !data ? (
        <Failed error={error} what="The list of charge sheets" onRetry={() => void refetch()} />
      ) : null}
      {error && data ? (
        <p className="note" role="status">
          This is what was saved at {formatInstant(new Date(dataUpdatedAt))}; nothing newer is known.
        </p>
      ) : null}
      {!data && !error ? <Waiting what="Fetching the charge sheets" /> : null}
      {data?.length === 0 ? (
        <p className="read">
          No charge sheet has been saved here yet. <Link href="/charge">Begin one</Link>: it says what to
          weigh for a batch, and gets a number that a melt refers to.
        </p>
      ) : null}
      <ul className="sheet-list">
        {data?.map(({ number, name, composition, mass, cost, currency, savedAt }) => (
          <li key={number} className="sheet-line">
            <Link href={`/charge-sheets/${number}`}>{number}</Link>
            <span>
              {name === '' ? '' : `${name}: `}
              {spacedComposition(composition)} at.%
              <ShareBar composition={composition} />
            </span>
            <span className="quiet">
              {entryText(mass)} g{cost === null ? '' : `, ${formatNumber(cost, 2)} ${currency ?? ''}`},{' '}
              {formatInstant(savedAt)}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
