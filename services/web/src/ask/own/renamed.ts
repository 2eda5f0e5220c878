import type { Draft, LetRow } from '../draft/draft.ts';

/**
 * The draft with another name for an expression; limits, ranking and front follow it, unless the
 * name is (for the moment) that of another expression or quantity.
 */
export function renamed(draft: Draft, row: LetRow, name: string, ids: readonly string[]): Partial<Draft> {
  const next = name.trim();
  const others = draft.lets.filter(({ key }) => key !== row.key).map((other) => other.name.trim());
  const taken = next === '' || ids.includes(next) || others.includes(next);
  const called = taken ? row.called : next;
  const follow = <Row extends { quantity: string }>(rows: Row[]): Row[] =>
    rows.map((one) => (one.quantity === row.called ? { ...one, quantity: called } : one));
  return {
    lets: draft.lets.map((one) => (one.key === row.key ? { ...one, name, called } : one)),
    ...(called === row.called
      ? {}
      : { limits: follow(draft.limits), rank: follow(draft.rank), front: follow(draft.front) }),
  };
}
