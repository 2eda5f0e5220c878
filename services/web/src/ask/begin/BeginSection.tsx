import { useEffect, useRef, useState } from 'react';
import type { Draft } from '../draft/draft.ts';
import './begin.css';
import { EarlierSearch } from './EarlierSearch.tsx';
import { LikeAlloy } from './LikeAlloy.tsx';
import { TemplateChoice } from './TemplateChoice.tsx';

interface BeginSectionProps {
  draft: Draft;
  /** nothing is in the form yet: the ways to begin are what a person looks for */
  blank: boolean;
  /** how often the form was filled anew: each time this folds away, or opens where it was emptied */
  fillings: number;
  replace: (draft: Draft) => void;
}

/** Ways to begin beside an empty form: a template, an earlier search, a known alloy. */
export function BeginSection({ draft, blank, fillings, replace }: BeginSectionProps) {
  const [open, setOpen] = useState(blank);
  const summary = useRef<HTMLElement>(null);
  const now = useRef(blank);
  now.current = blank;
  // Picking elements must not fold it: the cards would jump away under the pointer.
  useEffect(() => {
    if (fillings === 0) return;
    if (summary.current?.parentElement?.contains(document.activeElement)) summary.current.focus();
    setOpen(now.current);
  }, [fillings]);

  return (
    <details className="begin" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary ref={summary}>Begin from a template, an earlier search or a known alloy</summary>
      <div className="begin-ways">
        <TemplateChoice onFill={replace} />
        <EarlierSearch onFill={replace} />
        <LikeAlloy onFill={(part) => replace({ ...draft, ...part })} />
      </div>
    </details>
  );
}
