import type { QuantityView, SearchView } from '@tiegel/contract';
import { effectivePool } from '@tiegel/contract/terms';
import { Suspense } from 'react';
import { latePart } from '../frame/latePart.tsx';
import { Waiting } from '../frame/Waiting.tsx';
import { formatCount } from '../numbers/formatNumber.ts';
import type { ShownQuantity } from '../server/types.ts';
import { askedFirst } from './columns.ts';
import { FilterBar } from './filters/FilterBar.tsx';
import { isFiltered } from './filters/filters.ts';
import { FrontChoice } from './scatter/FrontChoice.tsx';
import './look.css';
import { TableView } from './candidates/TableView.tsx';
import { Meeting } from './filters/Meeting.tsx';
import { useView } from './useView.ts';
import { ViewLinks } from './ViewLinks.tsx';

// Plots are fetched when somebody looks at one: the first page does without them.
const ScatterView = latePart(async () => (await import('./scatter/ScatterView.tsx')).ScatterView);
const DistributionsView = latePart(
  async () => (await import('./distributions/DistributionsView.tsx')).DistributionsView,
);
const ElementsView = latePart(async () => (await import('./elements/ElementsView.tsx')).ElementsView);
const SystemsView = latePart(async () => (await import('./systems/SystemsView.tsx')).SystemsView);

const views = {
  table: TableView,
  scatter: ScatterView,
  distributions: DistributionsView,
  elements: ElementsView,
  systems: SystemsView,
  unexplored: SystemsView,
} as const;

/** What a finished search kept: its filters, and the view that the address names. */
export function ResultView({
  search,
  quantities,
}: {
  search: SearchView;
  quantities: readonly QuantityView[];
}) {
  const { id, specification, kept, counts, prices, moreQuantities } = search;
  const { view, change } = useView();
  const { asked, others } = askedFirst<ShownQuantity>(specification, [...quantities, ...moreQuantities]);
  const ordered = [...asked, ...others];
  const View = views[view.show];
  const passed = counts.passed === null ? '' : ` of ${formatCount(counts.passed)} that passed`;
  return (
    <section className="look" aria-labelledby="result-head">
      <div className="look-head">
        <h2 id="result-head">What was kept</h2>
        <ViewLinks view={view} />
      </div>
      <FilterBar
        searchId={id}
        filters={view.filters}
        pool={effectivePool(specification.elements)}
        quantities={ordered}
        currency={prices?.currency}
        among={`among the ${formatCount(kept)} kept${passed}`}
        onChange={(filters) => change({ filters })}
      />
      <FrontChoice
        specification={specification}
        quantities={ordered}
        filters={view.filters}
        onChange={(filters) => change({ filters })}
      />
      {isFiltered(view.filters) ? <Meeting id={id} filters={view.filters} kept={kept} /> : null}
      <Suspense fallback={<Waiting what="Fetching the view" />}>
        <View search={search} quantities={ordered} view={view} change={change} />
      </Suspense>
    </section>
  );
}
