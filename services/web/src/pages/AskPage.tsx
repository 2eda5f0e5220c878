import { useMemo } from 'react';
import { AskHead } from '../ask/begin/AskHead.tsx';
import '../ask/askPage.css';
import { marked } from '../ask/draft/draft.ts';
import { useDraft } from '../ask/draft/useDraft.ts';
import { useStartingPoint } from '../ask/draft/useStartingPoint.ts';
import { FaultsContext, focusField } from '../ask/faults/faultsContext.ts';
import { placeInWords } from '../ask/faults/placeInWords.ts';
import { FurtherSection } from '../ask/further/FurtherSection.tsx';
import { JsonSection } from '../ask/json/JsonSection.tsx';
import { LetsSection } from '../ask/own/LetsSection.tsx';
import { useOwnQuantities } from '../ask/own/useOwnQuantities.ts';
import { ElementsSection } from '../ask/pool/ElementsSection.tsx';
import { SampleContext } from '../ask/sample/sampleContext.ts';
import { useSampleView } from '../ask/sample/useSampleView.ts';
import { ConditionsSection } from '../ask/sections/ConditionsSection.tsx';
import { KeepSection } from '../ask/sections/KeepSection.tsx';
import { LimitsSection } from '../ask/sections/LimitsSection.tsx';
import { RankSection } from '../ask/sections/RankSection.tsx';
import { SharesSection } from '../ask/sections/SharesSection.tsx';
import { SizePanel } from '../ask/start/SizePanel.tsx';
import { StartButton } from '../ask/start/StartButton.tsx';
import { useSize } from '../ask/start/useSize.ts';
import { useAskData } from '../ask/useAskData.ts';
import { Failed } from '../frame/Failed.tsx';
import { FaultList } from '../frame/FaultList.tsx';
import type { Key } from '../frame/KeysDialog.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { lookupIn } from '../server/lookup.ts';

export const askKeys: readonly Key[] = [
  { keys: '←, ↑, →, ↓', does: 'walk the periodic table' },
  { keys: 'A … Z', does: 'go to the element of that symbol: F, then E, to iron' },
  { keys: 'Enter, Space', does: 'picks the element, or takes it out again' },
  { keys: '+', does: 'requires the element in every alloy' },
  { keys: '-', does: 'forbids the element' },
  { keys: 'Delete', does: 'takes the mark from the element' },
  { keys: '←, →, Page Up, Page Down', does: 'on an end over a distribution: moves a limit or a wish' },
  { keys: 'Ctrl+Enter', does: 'starts the search' },
];

const noQuantities: never[] = [];

/** What stands in place of the size while there is none. */
function hintFor(picked: number, countError: unknown): string {
  if (picked === 0) return 'Pick elements: how many compositions there are is counted as you go.';
  return countError ? 'Not counted.' : 'Counting …';
}

/** Describes a search: elements, shares, limits, ranking; counted and checked while it is written. */
export function AskPage() {
  useTitle('Describe a search');
  const { data, error, again } = useAskData();
  const { draft, change, replace, fillings, replaced, bringBack } = useDraft();
  const start = useStartingPoint(draft, replace);
  const {
    written,
    size,
    stale,
    faults,
    error: countError,
  } = useSize(draft, data?.quantities ?? noQuantities);
  const own = useOwnQuantities(draft.lets);
  const registry = data?.quantities ?? noQuantities;
  const quantities = useMemo(() => [...registry, ...own.views], [registry, own.views]);
  const sampleView = useSampleView(
    draft,
    written.specification,
    quantities.filter(({ id }) => own.meant.has(id) || registry.some((one) => one.id === id)),
  );
  const picked = marked(draft, 'pool', 'require').length;

  if (error && !data) return <Failed error={error} what="The form" onRetry={again} />;
  if (!data || start.loading) return <Waiting what="Fetching elements and quantities" />;
  const currency = data.prices?.currency;
  const lookup = lookupIn(data.quantities, currency);
  return (
    <FaultsContext value={faults}>
      <div className="ask">
        <AskHead
          draft={draft}
          change={change}
          replace={replace}
          fillings={fillings}
          bringBack={replaced ? bringBack : null}
          startError={start.error}
        />
        <div className="ask-form">
          <ElementsSection
            draft={draft}
            change={change}
            replace={replace}
            elements={data.elements}
            quantities={quantities}
            prices={data.prices}
          />
          <SharesSection draft={draft} change={change} />
          <SampleContext value={sampleView}>
            <LimitsSection draft={draft} change={change} quantities={quantities} currency={currency} />
            <RankSection draft={draft} change={change} quantities={quantities} currency={currency} />
          </SampleContext>
          <LetsSection
            draft={draft}
            change={change}
            quantities={registry}
            own={own}
            elements={data.elements}
            currency={currency}
          />
          <ConditionsSection draft={draft} change={change} quantities={quantities} />
          <KeepSection draft={draft} change={change} />
          <FurtherSection draft={draft} change={change} quantities={quantities} />
        </div>
        <aside className="ask-beside" aria-label="The question">
          <SizePanel
            size={size}
            pruned={draft.tally !== 'each'}
            stale={stale && picked > 0}
            faults={faults}
            placeOf={(pointer) => placeInWords(pointer, draft, (id) => lookup(id).name)}
            hint={hintFor(picked, countError)}
          >
            <FaultList
              inBackground
              error={countError}
              what="What you entered is kept; counting goes on when the server answers."
            />
            <StartButton
              specification={written.specification}
              ready={picked > 0}
              onRefused={faults.size > 0 ? () => focusField([...faults.keys()][0]!) : null}
            />
          </SizePanel>
          <JsonSection
            specification={written.specification}
            onApply={(next, opened) => (opened ? replace(next) : change(next))}
          />
        </aside>
      </div>
    </FaultsContext>
  );
}
