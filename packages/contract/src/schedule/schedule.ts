import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';
import { isZone } from './hours.ts';
import { priorities } from './priorities.ts';

const time = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/)
  .describe('Write a time of day as HH:MM, for example "20:00".');

const hoursSchema = z
  .strictObject({
    zone: z.string().max(64).describe('Write a time zone by its IANA name, for example "Europe/Berlin".'),
    from: time,
    to: time,
  })
  .check((payload) => {
    const { zone } = payload.value;
    if (!isZone(zone)) report(payload, 'schedule/unknown-zone', { zone: zone.slice(0, 64) }, ['zone']);
  })
  .describe(
    'Write hours, for example {"zone": "Europe/Berlin", "from": "20:00", "to": "06:00"}, or null for any time.',
  );

/**
 * When a search is worked on, beside its specification: its result does not depend on it.
 *
 * - `hours`: only between two times of day; null: at any time.
 * - `priority`: among searches that may be worked on, those that come first go before all others.
 */
export const scheduleSchema = z
  .strictObject({
    hours: hoursSchema.nullable(),
    priority: z.enum(priorities).describe(`Write one of: ${priorities.join(', ')}.`),
  })
  .meta({ id: 'Schedule' });
export type Schedule = z.infer<typeof scheduleSchema>;
