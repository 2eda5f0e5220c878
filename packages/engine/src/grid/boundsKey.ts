import type { Grid } from './grid.ts';

/** A key that systems share exactly when their elements have equal bounds place by place, and so equal points. */
export function boundsKey({ lowest, highest }: Grid): (system: readonly number[]) => string {
  const bounds = lowest.map((least, element) => `${least} ${highest[element]}`);
  const numbers = bounds.map((one) => bounds.indexOf(one));
  if (numbers.every((number) => number === 0)) return (system) => String(system.length);
  return (system) => {
    let key = '';
    for (const element of system) key += `${numbers[element]},`;
    return key;
  };
}
