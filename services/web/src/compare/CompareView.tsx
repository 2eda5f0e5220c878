import { useQuery } from '@tanstack/react-query';
import { onlyDifferent as differing, mostCompared } from '@tiegel/contract/terms';
import { Link } from 'wouter';
import { ConditionFields } from '../alloy/conditions/ConditionFields.tsx';
import { conditionsInWords } from '../alloy/conditions/conditionsInWords.ts';
import { AlloyEntry } from '../alloy/entry/AlloyEntry.tsx';
import type { useAlloyData } from '../alloy/state/useAlloyData.ts';
import { Failed } from '../frame/Failed.tsx';
import { Printed } from '../frame/Printed.tsx';
import { useNarrow } from '../frame/useNarrow.ts';
import { evidenceQuery, typicalQuery } from '../server/alloyQueries.ts';
import { searchQuery } from '../server/queries.ts';
import { CompareCards } from './CompareCards.tsx';
import { CompareTable } from './CompareTable.tsx';
import { rememberCompared } from './compareList.ts';
import type { CompareView as View } from './compareView.ts';
import { pageGroups } from './pageGroups.ts';
import { StripsFigure } from './StripsFigure.tsx';
import { useCompared } from './useCompared.ts';
import './compare.css';

interface CompareViewProps {
  view: View;
  change: (part: Partial<View>) => void;
  data: NonNullable<ReturnType<typeof useAlloyData>['data']>;
}

/** Up to six alloys side by side: a table with what differs, and strips on the scale of published alloys. */
export function CompareView({ view, change, data }: CompareViewProps) {
  const { alloys: texts, conditions, search: searchId, onlyDifferent, unreadable } = view;
  const { quantities, prices } = data;
  const SideBySide = useNarrow() ? CompareCards : CompareTable;
  const search = useQuery({ ...searchQuery(searchId ?? ''), enabled: searchId !== null });
  const alloys = useCompared(texts, conditions, data, search.data ?? null);
  const typical = useQuery(typicalQuery);
  const evidence = useQuery(evidenceQuery);
  const failed = alloys.find(({ error }) => error);
  const groups = pageGroups({
    alloys,
    quantities,
    typical: typical.data ?? null,
    evidence: evidence.data ?? null,
    currency: prices?.currency,
    search: search.data ?? null,
  });
  const shown = onlyDifferent ? differing(groups) : groups;
  const take = (list: readonly string[]) => {
    rememberCompared(list);
    change({ alloys: list });
  };
  return (
    <article className="column compare-page">
      <h1>Compare alloys</h1>
      {unreadable.length > 0 ? (
        <p className="note note-warning" role="status">
          The address also names {unreadable.map((text) => `“${text}”`).join(', ')}, which no alloy is called;
          it is left out.
        </p>
      ) : null}
      {texts.length === 0 ? (
        <p className="read">
          Nothing is compared yet. Write two alloys here, or press ‘Compare’ on the page of an{' '}
          <Link href="/alloys">alloy</Link>.
        </p>
      ) : null}
      <div className="screen-only">
        {texts.length < mostCompared ? (
          <AlloyEntry
            label={texts.length === 0 ? 'First alloy, at.%' : 'One more alloy, at.%'}
            action="Add to the comparison"
            onTake={(text) => take([...texts.filter((one) => one !== text), text])}
          />
        ) : (
          <p className="quiet">Six alloys are as many as can be read side by side.</p>
        )}
      </div>
      {texts.length > 0 ? (
        <>
          <ConditionFields conditions={conditions} onChange={(given) => change({ conditions: given })} />
          {search.error && !search.data ? (
            <Failed
              error={search.error}
              what="What the search asks of them"
              onRetry={() => void search.refetch()}
            />
          ) : null}
          {failed ? <Failed error={failed.error} what={`What the server says of ${failed.letter}`} /> : null}
          <p className="row screen-only">
            <label className="choice">
              <input
                type="checkbox"
                checked={onlyDifferent}
                onChange={(event) => change({ onlyDifferent: event.target.checked })}
              />
              Only what differs
            </label>
            <button type="button" onClick={() => window.print()}>
              Print
            </button>
          </p>
          <p className="small quiet read-small">
            A difference is judged by how much published alloys differ, from the first quartile to the third:
            little is less than a quarter of that, much more than all of it. ▲ highest, ▼ lowest.
          </p>
          <h2 className="unseen">Side by side</h2>
          <SideBySide
            alloys={alloys}
            groups={shown}
            conditions={conditions}
            search={searchId}
            onRemove={(text) => take(texts.filter((one) => one !== text))}
          />
          <h2>As a plot</h2>
          {typical.data ? (
            <StripsFigure
              alloys={alloys}
              quantities={quantities}
              typical={typical.data}
              currency={prices?.currency}
            />
          ) : null}
        </>
      ) : null}
      <footer className="provenance small quiet">
        <p>
          Computed for: {conditionsInWords(conditions)}. Prices{' '}
          {prices ? `of ${prices.date}${prices.invented ? ' (invented)' : ''}` : 'none'}.
        </p>
        <Printed />
      </footer>
    </article>
  );
}
