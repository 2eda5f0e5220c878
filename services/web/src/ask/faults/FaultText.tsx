import { fieldId, useFaultsAt } from './faultsContext.ts';

/** What is wrong at a place of the form, in words; nothing where all is well. */
export function FaultText({ pointer }: { pointer: string }) {
  const { faults } = useFaultsAt(pointer);
  if (faults.length === 0) return null;
  return (
    <span className="fault" id={`${fieldId(pointer)}-fault`}>
      {faults.join(' ')}
    </span>
  );
}
