import { type ConditionName, conditionNames, conditions } from '@tiegel/screening';

/** Reads the conditions from an address; what is no number or not allowed is left out. */
export function readConditions(address: URLSearchParams): Record<string, number> {
  const read = conditionNames.flatMap((name) => {
    const text = address.get(name);
    const value = Number(text);
    return text !== null && text.trim() !== '' && isAllowed(name, value) ? [[name, value] as const] : [];
  });
  return Object.fromEntries(read);
}

/** Writes them into an address; what is not given leaves it. */
export function writeConditions(address: URLSearchParams, given: Record<string, number>): URLSearchParams {
  for (const name of conditionNames) {
    if (given[name] === undefined) address.delete(name);
    else address.set(name, String(given[name]));
  }
  return address;
}

export function isAllowed(name: ConditionName, value: number): boolean {
  const { min, max } = conditions[name].range;
  return Number.isFinite(value) && value >= min && value <= max;
}
