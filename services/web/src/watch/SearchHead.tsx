import type { QuantityView, SearchView } from '@tiegel/contract';
import { warnsOfPrices } from '@tiegel/contract/terms';
import { Link } from 'wouter';
import { formatSeconds } from '../numbers/formatDuration.ts';
import { formatInstant } from '../numbers/formatInstant.ts';
import { formatCount } from '../numbers/formatNumber.ts';
import { asSentence } from '../words/asSentence.ts';
import { DifferencePanel } from './DifferencePanel.tsx';

/** Name and question of a search, what it found in one line, and what its result depends on. */
export function SearchHead({
  search,
  quantities,
}: {
  search: SearchView;
  quantities: readonly QuantityView[];
}) {
  const { id, name, question, state, notices, counts, kept, seconds, createdAt, finishedAt, prices } = search;
  return (
    <header className="column search-head">
      <div className="row">
        <h1>{name === '' ? 'Search without a name' : name}</h1>
        <Link href={`/ask?from=${encodeURIComponent(id)}`} className="button">
          Ask a variation
        </Link>
      </div>
      <p className="question">{asSentence(question)}</p>
      {state === 'done' ? (
        <p className="read">
          {counts.passed === null ? (
            <>
              The best of {formatCount(counts.points)} compositions in {formatCount(counts.systems)} systems;
              how many passed was not counted.{' '}
            </>
          ) : (
            <>
              <b>{formatCount(counts.passed)}</b> of {formatCount(counts.points)} compositions in{' '}
              {formatCount(counts.systems)} systems passed;{' '}
            </>
          )}
          <b>{formatCount(kept)}</b> are kept
          {seconds === null ? '' : `. Tested in ${formatSeconds(seconds)}`}.
        </p>
      ) : null}
      {notices.map((notice) => (
        <p key={notice} className="note">
          {notice}
        </p>
      ))}
      {warnsOfPrices(search, quantities) ? (
        <p className="note note-warning">The prices behind cost are invented for the demonstration.</p>
      ) : null}
      <DifferencePanel search={search} />
      <details className="small">
        <summary>What this result depends on</summary>
        <dl className="facts">
          <Fact name="Asked">{formatInstant(createdAt)}</Fact>
          {finishedAt ? <Fact name="Finished">{formatInstant(finishedAt)}</Fact> : null}
          <Fact name="Data version">
            <code>{search.dataVersion}</code>
          </Fact>
          <Fact name="Engine version">
            <code>{search.engineVersion}</code>
          </Fact>
          <Fact name="Prices">
            {prices
              ? `${prices.invented ? 'invented list' : 'list'} of ${prices.date}, ${prices.currency} per kg`
              : 'none'}
          </Fact>
          <Fact name="Specification">
            <code className="specification">{JSON.stringify(search.specification)}</code>
          </Fact>
        </dl>
      </details>
    </header>
  );
}

function Fact({ name, children }: { name: string; children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
