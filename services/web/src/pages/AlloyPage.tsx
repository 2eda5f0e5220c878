import { useParams } from 'wouter';
import { AlloyView } from '../alloy/AlloyView.tsx';
import { decoded, readAlloyText } from '../alloy/entry/readAlloyText.ts';
import { Unreadable } from '../alloy/entry/Unreadable.tsx';
import { useTitle } from '../frame/useTitle.ts';

/** Any alloy by its composition. Printable. */
export function AlloyPage() {
  const written = decoded(useParams<{ composition: string }>().composition ?? '');
  const read = readAlloyText(written);
  useTitle(read.text ?? 'An alloy');
  if (read.faults) return <Unreadable text={written} faults={read.faults} />;
  return <AlloyView composition={read.composition} search={null} candidate={null} />;
}
