import { Link } from 'wouter';
import { compareAddress } from '../compare/compareAddress.ts';
import { mostCompared, useCompareList } from '../compare/compareList.ts';
import type { AlloyState } from './alloyState.ts';
import { readAlloyText } from './readAlloyText.ts';

/** What can be done with the alloy: compared, changed by replacing an element, printed. */
export function AlloyActions({ alloy, replacing }: { alloy: AlloyState; replacing: boolean }) {
  const { composition, conditions, search } = alloy;
  const { list, toggle } = useCompareList();
  const text = textOf(composition);
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
      {replacing ? null : <a href="#editor-head">Replace an element: in the table below</a>}
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
    </>
  );
}

/** The canonical text, which is also the address. */
function textOf(composition: Record<string, number>): string {
  return readAlloyText(Object.entries(composition).flat().join('')).text ?? '';
}
