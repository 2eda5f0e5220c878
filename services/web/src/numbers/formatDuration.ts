import { formatNumber } from './formatNumber.ts';

const minute = 60;
const hour = 60 * minute;
const day = 24 * hour;

/** A length of time as people say it, rounded to what an estimate can promise: '8 s', '3 min', '5 h 20 min', '12 days'. */
export function formatDuration(seconds: number): string {
  if (seconds < 0.95) return 'under 1 s';
  if (seconds < 10) return `${formatNumber(seconds, seconds < 2 ? 1 : 0)} s`;
  if (seconds < 99.5) return `${formatNumber(seconds, 0)} s`;
  if (seconds < 1.5 * hour) return `${formatNumber(Math.round(seconds / minute), 0)} min`;
  if (seconds < 2 * day) {
    const hours = Math.floor(seconds / hour);
    const tens = Math.floor((seconds - hours * hour) / (10 * minute)) * 10;
    return tens === 0 || hours >= 10 ? `${hours} h` : `${hours} h ${tens} min`;
  }
  return seconds < 1000 * day
    ? `${formatNumber(seconds / day, 0)} days`
    : `${formatNumber(seconds / (365.25 * day), 0)} years`;
}

/** An estimate of a time, as such: 'about 8 s', 'under 1 s'. */
export function formatEstimate(seconds: number): string {
  const words = formatDuration(seconds);
  return words.startsWith('under') ? words : `about ${words}`;
}

/** A measured time in seconds, with digits enough to compare; nothing takes no time at all. */
export function formatSeconds(seconds: number): string {
  if (seconds < 0.005) return `under ${formatNumber(0.01, 2)} s`;
  return `${formatNumber(seconds, seconds < 10 ? 2 : seconds < 100 ? 1 : 0)} s`;
}
