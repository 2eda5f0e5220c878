import type { Amounts } from '@tiegel/contract';
import { type Fault, ProblemError } from '@tiegel/contract/terms';
import { formatComposition, parseAlloy } from '@tiegel/elements';
import { remedyHere } from '../../ask/faults/remedyHere.ts';

/** An alloy as it stands in an address or was typed: its composition (at.%) and canonical text, or what is wrong. */
export type ReadAlloy =
  | { composition: Amounts; text: string; faults: null }
  | { composition: null; text: null; faults: readonly Fault[] };

export function readAlloyText(written: string): ReadAlloy {
  try {
    const text = formatComposition(parseAlloy(written));
    return { composition: { ...parseAlloy(text) }, text, faults: null };
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const faults = error.faults.map((fault) => ({ ...fault, remedy: remedyHere(fault) }));
    return { composition: null, text: null, faults };
  }
}

/** A part of an address as plain text; as it stands where it is not encoded well. */
export function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
