/** A number as messages print it: a whole one with commas between thousands, as in 22,515,165. */
export function inDigits(value: number | bigint): string {
  const isWhole = typeof value === 'bigint' || Number.isSafeInteger(value);
  return isWhole ? String(value).replace(/\B(?=(\d{3})+$)/g, ',') : String(value);
}
