/** What still fits into a line of the text beside the form. */
const lineLength = 56;

/** JSON as people write specifications: what fits into a line stands in one, all else indented by two. */
export function writeJson(value: unknown, indent = ''): string {
  const short = oneLine(value);
  if (typeof value !== 'object' || value === null || short.length + indent.length <= lineLength) return short;
  const inner = `${indent}  `;
  const lines = Array.isArray(value)
    ? value.map((one) => inner + writeJson(one, inner))
    : Object.entries(value).map(([key, one]) => `${inner}${JSON.stringify(key)}: ${writeJson(one, inner)}`);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}\n${lines.join(',\n')}\n${indent}${close}`;
}

function oneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(oneLine).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).map(([key, one]) => `${JSON.stringify(key)}: ${oneLine(one)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}
