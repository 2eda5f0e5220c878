import type { CheckedData } from './checkedData.ts';

/** 56 elements by rising atomic number, each symbol and number once; every pair of them once. */
export function order({ elements, pairs }: CheckedData): string[] {
  const faults: string[] = [];
  if (elements.length !== 56) faults.push(`${elements.length} elements`);
  if (pairs.length !== (56 * 55) / 2) faults.push(`${pairs.length} pairs`);
  elements.forEach(({ symbol, atomicNumber }, index) => {
    const before = elements[index - 1]?.atomicNumber ?? 0;
    if (!(atomicNumber > before)) faults.push(`${symbol}: atomic number ${atomicNumber} after ${before}`);
  });
  const symbols = new Set(elements.map(({ symbol }) => symbol));
  if (symbols.size !== elements.length) faults.push('a symbol stands twice');
  const keys = new Set(pairs.map(({ a, b }) => [a, b].sort().join('-')));
  if (keys.size !== pairs.length) faults.push('a pair stands twice');
  for (const { a, b } of pairs) {
    if (a === b || !symbols.has(a) || !symbols.has(b)) faults.push(`the pair ${a}-${b} is none`);
  }
  return faults;
}
