import { Link } from 'wouter';
import { AlloyEntry } from '../alloy/entry/AlloyEntry.tsx';
import { exampleAlloys } from '../alloy/entry/exampleAlloys.ts';
import { useTitle } from '../frame/useTitle.ts';

/** Where an alloy is written, to be looked at. */
export function AlloysPage() {
  useTitle('Alloys');
  return (
    <div className="column">
      <h1>Look at an alloy</h1>
      <p className="read">
        Write any composition: what is likely of it, what speaks against it, every number with its formula and
        source, and what is published nearby.
      </p>
      <AlloyEntry />
      <p className="read">
        For example{' '}
        {exampleAlloys.map((text, at) => (
          <span key={text}>
            <Link href={`/alloys/${text}`}>{text}</Link>
            {at < exampleAlloys.length - 1 ? ', ' : '.'}
          </span>
        ))}
      </p>
    </div>
  );
}
