/** The JSON pointer (RFC 6901) of a place in a request; '' is the whole of it. */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** The same place as a person would say it: fractions.each.Al.max, limits[0]. */
export function placeInWords(path: readonly PropertyKey[]): string {
  if (path.length === 0) return 'The request';
  return path
    .map((step, depth) => (typeof step === 'number' ? `[${step}]` : (depth === 0 ? '' : '.') + String(step)))
    .join('');
}
