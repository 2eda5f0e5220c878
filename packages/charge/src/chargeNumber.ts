/** The number of a saved charge sheet as it is written on paper and crucible: 'C-0007'. */
export function chargeNumber(number: number): string {
  return `C-${String(number).padStart(4, '0')}`;
}

/** The number that a text such as 'C-0007', 'c7' or '7' means; null where it means none. */
export function numberOfCharge(text: string): number | null {
  const digits = /^(?:[cC]-?)?0*(\d{1,9})$/.exec(text.trim())?.[1];
  return digits === undefined ? null : Number(digits);
}
