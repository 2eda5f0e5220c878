import type { Schedule } from '@tiegel/contract';
import { isWithin, nextStart, priorityInWords } from '@tiegel/contract/terms';
import { formatInstant } from '../numbers/formatInstant.ts';

/** What the button that starts a search adds: nothing where it is usual. */
export function startInWords({ hours, priority }: Schedule): string {
  const when = hours === null ? [] : [`from ${hours.from} to ${hours.to}`];
  const place = priority === 'usual' ? [] : [priorityInWords[priority]];
  return ['Start search', ...when, ...place].join(', ');
}

/** Whether it would begin at once, and if not, when. */
export function beginInWords({ hours }: Schedule, now: Date): string | null {
  if (hours === null) return null;
  if (isWithin(hours, now)) return `It begins now and rests at ${hours.to} (${hours.zone}).`;
  return `It waits until ${formatInstant(nextStart(hours, now))}.`;
}
