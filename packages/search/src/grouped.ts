/** A whole number with commas between thousands, as in 22,515,165. */
export function grouped(count: number | bigint): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}
