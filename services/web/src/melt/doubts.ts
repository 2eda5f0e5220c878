import type { MeltEntry } from '@tiegel/contract';
import { formatNumber } from '../numbers/formatNumber.ts';
import { today } from './meltDraft.ts';

/** What is odd about the day of a melt, '' for nothing. @param date year-month-day */
export function doubtfulDay(date: string, now = today()): string {
  if (date > now) return 'This day is still to come: see the year and the month.';
  return date !== '' && date < '1950' ? 'That is long ago: see the year.' : '';
}

/** Nothing that is weighed comes to more in melting, '' where it does not. */
export function doubtfulIngot({ ingot, weighed }: Pick<MeltEntry, 'ingot' | 'weighed'>): string {
  const sum = weighed.reduce((grams, { mass }) => grams + mass, 0);
  // What a balance rounds, and what a crucible may give off.
  if (ingot === null || !(ingot > sum * 1.01)) return '';
  return `The ingot weighs more than the ${formatNumber(sum, 3)} g that were charged: see both.`;
}
