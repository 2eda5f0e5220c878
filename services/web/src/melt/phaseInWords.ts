/** A phase as it is printed: Greek letters for those that have one. */
export function phaseInWords(phase: string): string {
  const printed: Record<string, string> = { sigma: 'σ', mu: 'µ', L12: 'L1₂', other: 'another phase' };
  return printed[phase] ?? phase;
}

/** A label such as 'FCC+sigma' as it is read: 'FCC + σ'. */
export function labelInWords(label: string | null): string {
  return label === null ? 'not looked at yet' : label.split('+').map(phaseInWords).join(' + ');
}
