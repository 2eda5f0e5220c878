import { createContext, useContext } from 'react';
import type { PlacedFaults } from './placeFaults.ts';

export const FaultsContext = createContext<PlacedFaults>(new Map());

/** The id of the control that writes the place of the specification that a JSON pointer names. */
export function fieldId(pointer: string): string {
  return `field${pointer.replaceAll('/', '-')}`;
}

export function focusField(pointer: string): void {
  document.getElementById(fieldId(pointer))?.focus();
}

/** What is wrong at a field, and the attributes by which its control says so. */
export function useFaultsAt(pointer: string) {
  const faults = useContext(FaultsContext).get(pointer) ?? [];
  const id = fieldId(pointer);
  const described =
    faults.length > 0 ? { 'aria-invalid': true as const, 'aria-describedby': `${id}-fault` } : {};
  return { faults, id, described };
}
