import type { Fault } from '@tiegel/contract';
import { AlloyEntry } from './AlloyEntry.tsx';

/** An address that names no alloy: what is wrong with it, and a field to write it anew. */
export function Unreadable({ text, faults }: { text: string; faults: readonly Fault[] }) {
  return (
    <div className="column">
      <h1>This is no alloy that can be read</h1>
      <div className="note note-danger" role="alert">
        {faults.map(({ detail, remedy }) => (
          <p key={detail}>
            {detail} {remedy}
          </p>
        ))}
      </div>
      <AlloyEntry text={text} />
    </div>
  );
}
