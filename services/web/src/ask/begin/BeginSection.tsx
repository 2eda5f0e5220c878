import type { Draft } from '../draft.ts';
import './begin.css';
import { EarlierSearch } from './EarlierSearch.tsx';
import { LikeAlloy } from './LikeAlloy.tsx';
import { TemplateChoice } from './TemplateChoice.tsx';

interface BeginSectionProps {
  draft: Draft;
  /** nothing is in the form yet: the ways to begin are what a person looks for */
  blank: boolean;
  replace: (draft: Draft) => void;
}

/** Ways to begin beside an empty form: a template, an earlier search, a known alloy. */
export function BeginSection({ draft, blank, replace }: BeginSectionProps) {
  return (
    <details className="begin" open={blank || undefined}>
      <summary>Begin from a template, an earlier search or a known alloy</summary>
      <div className="begin-ways">
        <TemplateChoice onFill={replace} />
        <EarlierSearch onFill={replace} />
        <LikeAlloy onFill={(part) => replace({ ...draft, ...part })} />
      </div>
    </details>
  );
}
