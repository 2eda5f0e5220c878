import { useCallback, useMemo } from 'react';
import { useLocation, useSearch } from 'wouter';
import { useAlloyData } from '../alloy/state/useAlloyData.ts';
import { CompareView } from '../compare/CompareView.tsx';
import { readCompareView, type CompareView as View, writeCompareView } from '../compare/compareView.ts';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';

/** Up to six alloys side by side; the address holds them. */
export function ComparePage() {
  useTitle('Compare alloys');
  const [path, navigate] = useLocation();
  const text = useSearch();
  const view = useMemo(() => readCompareView(text), [text]);
  const change = useCallback(
    (part: Partial<View>) => navigate(`${path}?${writeCompareView({ ...readCompareView(text), ...part })}`),
    [navigate, path, text],
  );
  const { data, error, again } = useAlloyData();
  if (error && !data) return <Failed error={error} what="The comparison" onRetry={again} />;
  if (!data) return <Waiting what="Fetching the data of the elements" />;
  return <CompareView view={view} change={change} data={data} />;
}
