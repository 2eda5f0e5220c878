import type { Schedule } from './schedule.ts';

/** At any time, in turn with the others. */
export const usualSchedule: Schedule = { hours: null, priority: 'usual' };
