/** The first quantity that no row uses yet, the very first where all are used; undefined where there is none. */
export function nextQuantity(
  quantities: readonly { id: string }[],
  rows: readonly { quantity: string }[],
): string | undefined {
  const used = new Set(rows.map(({ quantity }) => quantity));
  return (quantities.find(({ id }) => !used.has(id)) ?? quantities[0])?.id;
}
