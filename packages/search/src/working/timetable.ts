import { hoursInWords, isWithin, nextStart, type Priority, priorities } from '@tiegel/contract/terms';
import type { Underway } from './underway.ts';

/** Whether a search is outside its hours. */
export function rests({ schedule: { hours } }: Underway, now: Date): boolean {
  return hours !== null && !isWithin(hours, now);
}

/** Why a search rests now although it could go on; null where it may be worked on. */
export function restReason({ schedule: { hours } }: Underway, now: Date): string | null {
  if (hours === null || isWithin(hours, now)) return null;
  const next = nextStart(hours, now).toISOString().slice(0, 16).replace('T', ' ');
  return `It is worked on from ${hoursInWords(hours)}; next at ${next} UTC. Change its hours to start it now.`;
}

/** Those whose turn it is before others: by priority, then in the order given. */
export function inOrderOfPriority(searches: readonly Underway[]): Underway[] {
  const place = (priority: Priority) => priorities.indexOf(priority);
  return searches.toSorted((a, b) => place(a.schedule.priority) - place(b.schedule.priority));
}
