/** A value of its own as one line of JSON. */
export function* jsonText(value: unknown): Generator<string> {
  yield `${JSON.stringify(value)}\n`;
}

/** An array as JSON, an entry a line, without ever holding it. */
export function* jsonList(entries: Iterable<unknown>): Generator<string> {
  let before = '[\n';
  for (const entry of entries) {
    yield before + JSON.stringify(entry);
    before = ',\n';
  }
  yield before === '[\n' ? '[]' : '\n]';
}
