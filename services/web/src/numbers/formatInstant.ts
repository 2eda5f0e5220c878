const two = (value: number) => String(value).padStart(2, '0');

/** An instant as ISO date and time of the reader's zone, which it names: '2026-11-25 14:05 UTC+1'. */
export function formatInstant(instant: string | Date): string {
  const at = new Date(instant);
  const date = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${date} ${two(at.getHours())}:${two(at.getMinutes())} ${zoneOf(at)}`;
}

function zoneOf(at: Date): string {
  const minutes = -at.getTimezoneOffset();
  if (minutes === 0) return 'UTC';
  const size = Math.abs(minutes);
  const rest = size % 60;
  return `UTC${minutes < 0 ? '−' : '+'}${Math.floor(size / 60)}${rest === 0 ? '' : `:${two(rest)}`}`;
}
