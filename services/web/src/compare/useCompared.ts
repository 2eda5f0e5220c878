import { useQueries } from '@tanstack/react-query';
import type { Amounts, Explanation, SearchView, Values } from '@tiegel/contract';
import { areSameConditions, quantities as known, valuesOf } from '@tiegel/screening';
import { useMemo } from 'react';
import { readAlloyText } from '../alloy/entry/readAlloyText.ts';
import { expressionsHere } from '../alloy/state/expressionsHere.ts';
import { factsOf } from '../alloy/state/factsOf.ts';
import type { useAlloyData } from '../alloy/state/useAlloyData.ts';
import { explanationQuery } from '../server/alloyQueries.ts';
import { candidateQuery } from '../server/queries.ts';

/** One alloy of a comparison; the letter stands for it in plots and marks. */
export interface Compared {
  letter: string;
  text: string;
  composition: Amounts;
  values: Values;
  /** null while it is not known */
  explanation: Explanation | null;
  error: unknown;
}

const closed = known.map(({ id }) => id);

/**
 * The alloys with their quantities, and what the server says of each. Quantities are computed here, with the
 * expressions of the search; what it kept has the numbers that it stored.
 */
export function useCompared(
  texts: readonly string[],
  conditions: Record<string, number>,
  data: NonNullable<ReturnType<typeof useAlloyData>['data']>,
  search: SearchView | null,
): Compared[] {
  const { elements, pairs } = data;
  const { conditions: searched = {}, lets } = search?.specification ?? {};
  const asked = useMemo(() => [...closed, ...expressionsHere(lets)], [lets]);
  const computed = useMemo(
    () =>
      texts.map((text, at) => {
        const composition = readAlloyText(text).composition ?? {};
        const facts = factsOf(Object.keys(composition), elements, pairs);
        const letter = String.fromCharCode('A'.charCodeAt(0) + at);
        return { letter, text, composition, values: valuesOf(composition, facts, asked, conditions) };
      }),
    [texts, conditions, elements, pairs, asked],
  );
  const answers = useQueries({
    queries: computed.map(({ composition }) => explanationQuery(composition, conditions)),
  });
  // What the search found are its own numbers, with the prices of its day, unless other conditions are asked for.
  const asFound = search !== null && areSameConditions(conditions, searched);
  const found = useQueries({
    queries: texts.map((text) => ({ ...candidateQuery(search?.id ?? '', text), enabled: asFound })),
  });
  return computed.map((one, at) => ({
    ...one,
    values: asFound ? { ...one.values, ...found[at]?.data?.quantities } : one.values,
    explanation: answers[at]?.data ?? null,
    error: answers[at]?.data ? null : (answers[at]?.error ?? null),
  }));
}
