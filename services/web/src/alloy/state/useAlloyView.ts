import type { Amounts } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { useCallback, useMemo } from 'react';
import { useLocation, useSearch } from 'wouter';
import { inPlace } from '../../frame/useVisit.ts';
import { type AlloyView, readAlloyView, writeAlloyView } from './alloyView.ts';

/**
 * The view that the address names, and how to change it or the composition. Changes replace the
 * address in place: whoever edits keeps focus, and Back leaves the alloy.
 */
export function useAlloyView(): {
  view: AlloyView;
  change: (part: Partial<AlloyView>) => void;
  compose: (composition: Amounts) => void;
} {
  const [path, navigate] = useLocation();
  const text = useSearch();
  const view = useMemo(() => readAlloyView(text), [text]);
  const go = useCallback(
    (to: string, query: string) =>
      navigate(query === '' ? to : `${to}?${query}`, { replace: true, state: inPlace }),
    [navigate],
  );
  const change = useCallback(
    (part: Partial<AlloyView>) => go(path, writeAlloyView({ ...readAlloyView(text), ...part })),
    [go, path, text],
  );
  const compose = useCallback(
    (composition: Amounts) => {
      const folder = path.slice(0, path.lastIndexOf('/'));
      go(`${folder}/${formatComposition(composition)}`, text);
    },
    [go, path, text],
  );
  return { view, change, compose };
}
