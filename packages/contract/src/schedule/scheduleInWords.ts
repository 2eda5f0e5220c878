import { hoursInWords } from './hours.ts';
import type { Priority } from './priorities.ts';
import type { Schedule } from './schedule.ts';

/** Where a search goes among several. */
export const priorityInWords: Record<Priority, string> = {
  first: 'before all others',
  usual: 'in turn with the others',
  last: 'when nothing else waits',
};

/** 'at any time, in turn with the others' */
export function scheduleInWords({ hours, priority }: Schedule): string {
  return `${hours === null ? 'at any time' : `from ${hoursInWords(hours)}`}, ${priorityInWords[priority]}`;
}
