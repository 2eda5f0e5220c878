import { useQueries } from '@tanstack/react-query';
import type { Amounts, Explanation, Values } from '@tiegel/contract';
import { quantities as known, valuesOf } from '@tiegel/screening';
import { useMemo } from 'react';
import { factsOf } from '../alloy/factsOf.ts';
import { readAlloyText } from '../alloy/readAlloyText.ts';
import type { useAlloyData } from '../alloy/useAlloyData.ts';
import { explanationQuery } from '../server/alloyQueries.ts';

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

/** The alloys with their quantities, computed here, and what the server says of each. */
export function useCompared(
  texts: readonly string[],
  conditions: Record<string, number>,
  data: NonNullable<ReturnType<typeof useAlloyData>['data']>,
): Compared[] {
  const { elements, pairs } = data;
  const computed = useMemo(
    () =>
      texts.map((text, at) => {
        const composition = readAlloyText(text).composition ?? {};
        const facts = factsOf(Object.keys(composition), elements, pairs);
        const letter = String.fromCharCode('A'.charCodeAt(0) + at);
        return { letter, text, composition, values: valuesOf(composition, facts, closed, conditions) };
      }),
    [texts, conditions, elements, pairs],
  );
  const answers = useQueries({
    queries: computed.map(({ composition }) => explanationQuery(composition, conditions)),
  });
  return computed.map((one, at) => ({
    ...one,
    explanation: answers[at]?.data ?? null,
    error: answers[at]?.data ? null : (answers[at]?.error ?? null),
  }));
}
