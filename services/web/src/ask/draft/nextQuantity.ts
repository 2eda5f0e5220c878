/**
 * The quantity of a new row: the first that no row uses yet, of those that are likely wanted, then
 * of all; the very first where all are used. Undefined where there is none.
 */
export function nextQuantity(
  quantities: readonly { id: string }[],
  rows: readonly { quantity: string }[],
  likely: readonly { quantity: string }[] = [],
): string | undefined {
  const used = new Set(rows.map(({ quantity }) => quantity));
  const wanted = likely.find(
    ({ quantity }) => !used.has(quantity) && quantities.some(({ id }) => id === quantity),
  );
  return wanted?.quantity ?? (quantities.find(({ id }) => !used.has(id)) ?? quantities[0])?.id;
}
