import type { Plan } from '@tiegel/contract';
import { printedUnit } from '@tiegel/contract/terms';
import { lateQuantities } from '@tiegel/insight/late';
import { quantities } from '@tiegel/screening';

/** What must be said before a search by a quantity that means nothing of some alloys: they are counted and ranked all the same. */
export function groundNotices({ specification }: Pick<Plan, 'specification'>): string[] {
  const { limits, rank, front = [], keptOnly = [], lets = {} } = specification;
  const named = new Set([...limits, ...rank, ...front].map(({ quantity }) => quantity));
  // A figure of merit names only what stands before it.
  for (const [id, formula] of Object.entries(lets).toReversed()) {
    if (named.has(id)) for (const word of formula.match(/\w+/g) ?? []) named.add(word);
  }
  return quantities.flatMap(({ id, name, basis }) => {
    if (!named.has(id)) return [];
    const late = basis && lateQuantities.find((one) => one.id === basis.quantity);
    if (!late) return [];
    if (keptOnly.some(({ quantity, max }) => quantity === late.id && max !== undefined && max <= basis.max))
      return [];
    const most = `${basis.max}${late.unit === '' ? '' : ` ${printedUnit(late.unit)}`}`;
    return [
      `${name} means nothing of alloys whose ${late.name.toLowerCase()} is above ${most}, and they are ranked all the same. Ask of what is kept (“keptOnly”) ${late.id} up to ${most} to leave them out.`,
    ];
  });
}
