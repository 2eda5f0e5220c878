import { useQuery } from '@tanstack/react-query';
import type { Amounts, Candidate, Limit, SearchView } from '@tiegel/contract';
import type { SearchSpace } from '@tiegel/contract/terms';
import { areSameConditions, quantities as known, valuesOf } from '@tiegel/screening';
import { useMemo, useState } from 'react';
import { useSettled } from '../../ask/useSettled.ts';
import { evidenceQuery, explanationQuery, typicalQuery } from '../../server/alloyQueries.ts';
import { ownPairs } from '../../server/ownPairs.ts';
import type { AlloyState } from './alloyState.ts';
import { expressionsHere } from './expressionsHere.ts';
import { factsOf } from './factsOf.ts';
import { shareDecimalsOf } from './shareDecimalsOf.ts';
import type { useAlloyData } from './useAlloyData.ts';

/** Which alloy, and in the light of what. */
export interface AlloyAsked {
  composition: Amounts;
  /** that the address names */
  conditions: Record<string, number>;
  search: SearchView | null;
  candidate: Candidate | null;
}

/** The same list every time, so that nothing seems to have changed. */
const none: readonly Limit[] = [];
/** One step of the arrow keys where no grid gives it, at.%. */
const usualStep = 1;

/**
 * Everything about an alloy. What is a formula of the composition is computed here, at once; what
 * takes the server (phases, what competes, what is published) follows a moment after the last
 * change, and the answer to the composition before stands there as stale meanwhile.
 */
export function useAlloy(
  { composition, conditions, search, candidate }: AlloyAsked,
  data: NonNullable<ReturnType<typeof useAlloyData>['data']>,
): AlloyState {
  const { elements, pairs, quantities, prices } = data;
  const symbols = Object.keys(composition).sort();
  const system = symbols.join(' ');
  // Formulas are bound once for the same facts: a change of amounts alone costs next to nothing.
  const facts = useMemo(() => factsOf(system.split(' '), elements, pairs), [system, elements, pairs]);
  const own = useMemo(() => ownPairs(pairs), [pairs]);
  const closed = useMemo(
    () => quantities.map(({ id }) => id).filter((id) => known.some((quantity) => quantity.id === id)),
    [quantities],
  );
  const { lets, limits = none } = search?.specification ?? {};
  const expressions = useMemo(() => expressionsHere(lets), [lets]);
  const values = useMemo(
    () => ({
      ...valuesOf(composition, facts, closed, conditions),
      ...(expressions.length === 0 ? {} : valuesOf(composition, facts, expressions, conditions)),
    }),
    [composition, facts, closed, expressions, conditions],
  );
  const tested = useMemo(
    () => limits.filter(({ quantity }) => quantities.some(({ id }) => id === quantity)),
    [limits, quantities],
  );
  // What a search found are its own numbers, with the prices of its day, unless other conditions are asked for.
  const asFound = candidate !== null && areSameConditions(conditions, search?.specification.conditions ?? {});

  const asked = useMemo(() => ({ composition, conditions }), [composition, conditions]);
  const settled = useSettled(asked);
  const explanation = useQuery(explanationQuery(settled.composition, settled.conditions));
  const shown = useLast(explanation.data);
  const evidence = useQuery(evidenceQuery);
  const typical = useQuery(typicalQuery);
  const specification = search?.specification ?? null;
  const space = useMemo(() => specification && spaceOf(specification), [specification]);
  const fractions = space?.fractions;
  return {
    composition,
    symbols,
    decimals: shareDecimalsOf(composition, search),
    step: typeof fractions === 'object' ? fractions.step : usualStep,
    conditions,
    facts,
    values: asFound ? { ...values, ...candidate.quantities } : values,
    quantities,
    elements,
    ownPairs: own,
    prices,
    explanation: shown,
    stale: settled !== asked || explanation.data === undefined,
    error: explanation.error,
    retry: () => void explanation.refetch(),
    evidence: evidence.data ?? null,
    typical: typical.data ?? null,
    limits: tested,
    space,
    search,
    candidate,
  };
}

/** Nothing else of a specification: what is sent to the server holds no key that it does not know. */
function spaceOf({ elements, components, fractions }: SearchSpace): SearchSpace {
  return { elements, components, fractions };
}

/** The last answer that came, while the next is awaited or failed; null before the first. */
function useLast<Answer>(answer: Answer | undefined): Answer | null {
  const [last, setLast] = useState<Answer | null>(null);
  if (answer === undefined || answer === last) return last;
  setLast(answer);
  return answer;
}
