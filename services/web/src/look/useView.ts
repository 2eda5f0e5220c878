import { useCallback, useMemo } from 'react';
import { useLocation, useSearch } from 'wouter';
import { sharedText, shareText } from '../frame/sharedText.ts';
import { readView, type ViewState, writeView } from './viewState.ts';

const place = 'tiegel.columns';

/**
 * The view that the address names, and how to change it. Changes replace the address, so that
 * Back leaves the result. Columns are remembered for results that are opened later.
 */
export function useView(): { view: ViewState; change: (part: Partial<ViewState>) => void } {
  const [path, navigate] = useLocation();
  const text = useSearch();
  const view = useMemo(() => {
    const read = readView(text);
    return { ...read, columns: read.columns ?? rememberedColumns() };
  }, [text]);
  const change = useCallback(
    (part: Partial<ViewState>) => {
      if (part.columns !== undefined) shareText(place, part.columns?.join(',') ?? '');
      // Another selection begins at its first row.
      const first = 'filters' in part || 'order' in part || 'direction' in part ? { at: 0 } : {};
      const written = writeView({ ...readView(text), ...first, ...part });
      navigate(written === '' ? path : `${path}?${written}`, { replace: true });
    },
    [navigate, path, text],
  );
  return { view, change };
}

function rememberedColumns(): string[] | null {
  return sharedText(place)?.split(',') ?? null;
}
