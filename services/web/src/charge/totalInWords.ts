import { entryText } from '../numbers/parseNumber.ts';

/** Says of an alloy as it was typed what its amounts make, where that is not 100; '' for an alloy without amounts. */
export function totalInWords(written: string): string {
  const amounts = [...written.matchAll(/[A-Z][a-z]?\s*([\d.]*)/g)].map(([, amount]) => amount!);
  if (amounts.every((amount) => amount === '')) return '';
  const total = amounts.reduce((sum, amount) => sum + (amount === '' ? 1 : Number(amount)), 0);
  if (Math.abs(total - 100) < 1e-6) return '';
  return `The amounts make ${entryText(Number(total.toFixed(3)))}; they are taken as parts of it.`;
}
