import { mostCompared } from '@tiegel/contract/terms';
import { formatComposition } from '@tiegel/elements';
import { Link } from 'wouter';
import { compareAddress } from '../compare/compareAddress.ts';
import { useCompareList } from '../compare/compareList.ts';
import { AddToShortlist } from '../shortlist/AddToShortlist.tsx';
import type { AlloyState } from './state/alloyState.ts';

interface AlloyActionsProps {
  alloy: AlloyState;
  /** opens the table of replacements; null while it is open */
  onReplace: (() => void) | null;
}

/** What can be done with the alloy: compared, an element replaced, searched around, weighed out, printed. */
export function AlloyActions({ alloy, onReplace }: AlloyActionsProps) {
  const { composition, conditions, search } = alloy;
  const { list, toggle } = useCompareList();
  const text = formatComposition(composition);
  const chosen = list.includes(text);
  const full = !chosen && list.length >= mostCompared;
  return (
    <>
      <button type="button" aria-pressed={chosen} disabled={full} onClick={() => toggle(text)}>
        {chosen ? '✓ In the comparison' : full ? `${mostCompared} are compared already` : 'Compare'}
      </button>
      {list.length > 0 ? (
        <Link className="button" href={compareAddress(list, conditions, search?.id ?? null)}>
          See {list.length === 1 ? 'the one' : `the ${list.length}`} compared
        </Link>
      ) : null}
      {onReplace ? (
        <button type="button" onClick={onReplace}>
          Replace an element
        </button>
      ) : null}
      <AddToShortlist entries={[text]} search={search?.id ?? null} />
      <Link className="button" href={`/ask?like=${text}`}>
        Search near it
      </Link>
      <Link className="button" href={`/charge?alloy=${text}`}>
        Weigh it out
      </Link>
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
    </>
  );
}
