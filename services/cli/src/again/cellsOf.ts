/** The cells of one line of CSV (RFC 4180); quoted ones without their quotes. Exports have no line breaks inside a cell. */
export function cellsOf(line: string): string[] {
  const cells: string[] = [];
  for (const [, quoted, plain] of `${line},`.matchAll(/(?:"((?:[^"]|"")*)"|([^,]*)),/g)) {
    cells.push(quoted === undefined ? plain! : quoted.replaceAll('""', '"'));
  }
  return cells;
}
