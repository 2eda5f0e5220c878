import { useQuery } from '@tanstack/react-query';
import type { Amounts, Candidate, SearchView } from '@tiegel/contract';
import { useMemo } from 'react';
import { useSettled } from '../ask/useSettled.ts';
import { Failed } from '../frame/Failed.tsx';
import { Waiting } from '../frame/Waiting.tsx';
import { weighingQuery } from '../server/alloyQueries.ts';
import './alloy.css';
import { AlloyActions } from './AlloyActions.tsx';
import { AlloyHead } from './AlloyHead.tsx';
import { CompetesSection } from './competes/CompetesSection.tsx';
import { ConditionFields } from './conditions/ConditionFields.tsx';
import { CriteriaTable } from './criteria/CriteriaTable.tsx';
import { CompositionEditor } from './editor/CompositionEditor.tsx';
import { EntropyFigure } from './entropy/EntropyFigure.tsx';
import { Hazards } from './Hazards.tsx';
import { CandidateLine } from './inSearch/CandidateLine.tsx';
import { LimitMargins } from './inSearch/LimitMargins.tsx';
import { SpaceOfSearch } from './inSearch/SpaceOfSearch.tsx';
import { PageParts } from './PageParts.tsx';
import { Provenance } from './Provenance.tsx';
import { PhaseSection } from './phases/PhaseSection.tsx';
import { QuantityList } from './quantities/QuantityList.tsx';
import { Sensitivities } from './quantities/Sensitivities.tsx';
import { ReplaceSection } from './replace/ReplaceSection.tsx';
import type { AlloyState } from './state/alloyState.ts';
import { useAlloy } from './state/useAlloy.ts';
import { useAlloyData } from './state/useAlloyData.ts';
import { useAlloyView } from './state/useAlloyView.ts';
import { StrengthFigure } from './strength/StrengthFigure.tsx';
import { VerdictPanel } from './verdict/VerdictPanel.tsx';
import { WordsSection } from './WordsSection.tsx';
import { WeighingSection } from './weighing/WeighingSection.tsx';

interface AlloyViewProps {
  composition: Amounts;
  search: SearchView | null;
  candidate: Candidate | null;
  /** whether the search kept it is not known yet */
  looking?: boolean;
}

/** An alloy, alone or in the light of a search: changed in place, understood from the first screen down. */
export function AlloyView(props: AlloyViewProps) {
  const { data, error, again } = useAlloyData();
  if (error && !data) return <Failed error={error} what="The alloy" onRetry={again} />;
  if (!data) return <Waiting what="Fetching the data of the elements" />;
  return <Known {...props} data={data} />;
}

type KnownProps = AlloyViewProps & { data: NonNullable<ReturnType<typeof useAlloyData>['data']> };

function Known({ composition, search, candidate, looking = false, data }: KnownProps) {
  const { view, change, compose } = useAlloyView();
  const { specification } = search ?? {};
  const conditions = useMemo(
    () => ({ ...specification?.conditions, ...view.conditions }),
    [specification, view.conditions],
  );
  const alloy = useAlloy({ composition, conditions, search, candidate }, data);
  const weighing = useWeighing(alloy, view.mass, view.resolution);
  return (
    <article className="column alloy-page">
      <AlloyHead
        alloy={alloy}
        actions={
          <AlloyActions
            alloy={alloy}
            onReplace={
              view.replace === null ? () => change({ replace: alloy.symbols[0]!, partners: [] }) : null
            }
          />
        }
      >
        <CandidateLine alloy={alloy} looking={looking} />
      </AlloyHead>
      <div className="alloy-sides">
        <VerdictPanel alloy={alloy} />
        <div className="column">
          <CompositionEditor
            alloy={alloy}
            onChange={compose}
            onReplace={(symbol) => change({ replace: symbol, partners: [] })}
          />
          <SpaceOfSearch alloy={alloy} />
          <LimitMargins alloy={alloy} weighing={weighing.data} />
        </div>
      </div>
      {view.replace === null ? null : (
        <ReplaceSection alloy={alloy} replace={view.replace} partners={view.partners} onChange={change} />
      )}
      <section aria-labelledby="conditions" className="screen-only">
        <h2 id="conditions">Looked at under these conditions</h2>
        <ConditionFields conditions={conditions} onChange={(given) => change({ conditions: given })} />
      </section>
      <PageParts />
      <PhaseSection alloy={alloy} />
      <CompetesSection alloy={alloy} />
      <CriteriaTable alloy={alloy} weighing={weighing.data} />
      <StrengthFigure alloy={alloy} />
      <QuantityList alloy={alloy} weighing={weighing.data} />
      <Sensitivities alloy={alloy} />
      <WeighingSection
        alloy={alloy}
        mass={view.mass}
        resolution={view.resolution}
        onChange={change}
        weighing={weighing.data}
        error={weighing.error}
        stale={weighing.stale}
      />
      <EntropyFigure alloy={alloy} />
      <WordsSection alloy={alloy} />
      <Hazards composition={composition} elements={alloy.elements} />
      <Provenance alloy={alloy} />
    </article>
  );
}

/** What weighing leaves certain, asked a moment after the last change. */
function useWeighing({ composition, conditions, limits }: AlloyState, mass: number, resolution: number) {
  const asked = useMemo(
    () => ({ composition, mass, resolution, limits, conditions }),
    [composition, mass, resolution, limits, conditions],
  );
  const settled = useSettled(asked, 400);
  const { data, error, isPlaceholderData } = useQuery(weighingQuery(settled, true));
  return { data: data ?? null, error, stale: settled !== asked || isPlaceholderData };
}
