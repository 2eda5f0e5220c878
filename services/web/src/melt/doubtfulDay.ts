import { today } from './meltDraft.ts';

/** What is odd about the day of a melt, '' for nothing. The reader's own calendar decides, which no server knows. @param date year-month-day */
export function doubtfulDay(date: string, now = today()): string {
  if (date > now) return 'This day is still to come: see the year and the month.';
  return date !== '' && date < '1950' ? 'That is long ago: see the year.' : '';
}
