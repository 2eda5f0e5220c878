import type { Schedule } from '@tiegel/contract';
import { isZone, type Priority } from '@tiegel/contract/terms';

/** Hours and priority as they are being written: times of day stay though the hours are not asked for. */
export interface ScheduleDraft {
  limited: boolean;
  /** HH:MM */
  from: string;
  to: string;
  zone: string;
  priority: Priority;
}

/** What the fields hold for a schedule; without hours those of a night by this computer's clock. */
export function scheduleDraftOf({ hours, priority }: Schedule): ScheduleDraft {
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const { from, to, zone } = hours ?? { from: '20:00', to: '06:00', zone: timeZone };
  return { limited: hours !== null, from, to, zone, priority };
}

/** The schedule that was written. */
export function scheduleOf({ limited, from, to, zone, priority }: ScheduleDraft): Schedule {
  return { hours: limited ? { zone: zone.trim(), from, to } : null, priority };
}

/** What is wrong with the fields and what would be right, or null. */
export function scheduleFault({ limited, from, to, zone }: ScheduleDraft): string | null {
  if (!limited) return null;
  if (from === '' || to === '') return 'Write both times of day, such as 20:00 and 06:00.';
  if (zone.trim() === '' || !isZone(zone.trim())) {
    return `No time zone is called “${zone.trim()}”: write one by its IANA name, such as Europe/Berlin.`;
  }
  return null;
}
