/** Two times of day in a named zone between which a search is worked on; `from` after `to` is over midnight, both the same are all day. */
export interface Hours {
  /** IANA name, such as Europe/Berlin */
  zone: string;
  /** HH:MM, local, included */
  from: string;
  /** HH:MM, local, not included */
  to: string;
}

const minuteMs = 60_000;
const dayMinutes = 24 * 60;

/** Whether an instant lies within hours, by the clock on the wall of the zone: it follows summer time by itself. */
export function isWithin({ zone, from, to }: Hours, instant: Date): boolean {
  const now = clockMinutes(zone, instant);
  const [start, end] = [minutesOf(from), minutesOf(to)];
  if (start === end) return true;
  return start < end ? start <= now && now < end : now >= start || now < end;
}

/**
 * The first minute from an instant on that lies within hours. Where the clock skips the beginning,
 * it is the first minute after the skip. Takes four looks at the clock, some twenty on a day on which
 * it is changed.
 */
export function nextStart(hours: Hours, instant: Date): Date {
  const first = new Date(Math.ceil(instant.getTime() / minuteMs) * minuteMs);
  if (isWithin(hours, first)) return first;
  const ahead = inDay(minutesOf(hours.from) - clockMinutes(hours.zone, first));
  const change = firstChange(hours.zone, first, ahead);
  return change === null ? minutesAfter(first, ahead) : nextStart(hours, minutesAfter(first, change));
}

/** After how many minutes, up to so many, the clock on the wall does not show what it would if nobody had changed it; null where it does. */
function firstChange(zone: string, from: Date, most: number): number | null {
  const start = clockMinutes(zone, from);
  const isChanged = (minutes: number) =>
    clockMinutes(zone, minutesAfter(from, minutes)) !== inDay(start + minutes);
  if (!isChanged(most)) return null;
  let [before, after] = [0, most];
  while (after - before > 1) {
    const middle = (before + after) >>> 1;
    if (isChanged(middle)) after = middle;
    else before = middle;
  }
  return after;
}

const minutesAfter = (instant: Date, minutes: number): Date =>
  new Date(instant.getTime() + minutes * minuteMs);

/** Minutes since midnight, of some that may reach over it. */
const inDay = (minutes: number): number => (minutes + dayMinutes) % dayMinutes;

/** Whether this computer knows a zone. */
export function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/** Hours as a sentence states them: '20:00 to 06:00 (Europe/Berlin)'. */
export function hoursInWords({ zone, from, to }: Hours): string {
  return `${from} to ${to} (${zone})`;
}

function minutesOf(time: string): number {
  const [hour, minute] = time.split(':').map(Number);
  return hour! * 60 + minute!;
}

const clocks = new Map<string, Intl.DateTimeFormat>();

/** Minutes since local midnight. */
function clockMinutes(zone: string, instant: Date): number {
  let clock = clocks.get(zone);
  if (clock === undefined) {
    clock = new Intl.DateTimeFormat('en-GB', {
      ...{ timeZone: zone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
    });
    clocks.set(zone, clock);
  }
  return minutesOf(clock.format(instant));
}
