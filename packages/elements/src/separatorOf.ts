/** What stands between the fields of a table: a spreadsheet writes tabs when cells are copied, and semicolons where decimals have a comma. */
export type Separator = ',' | ';' | '\t';

/** A first line such as sep=; by which spreadsheets tell each other the separator. It is no row of the table. */
const statement = /^\uFEFF?"?sep=([,;\t])"?[,;\t ]*(?:\r\n|\n|\r|$)/i;

/** The separator that such a line states, else the one that stands first in the header, outside quotes; a comma where the header has but one column. */
export function separatorOf(text: string): Separator {
  const stated = statement.exec(text)?.[1];
  if (stated !== undefined) return stated as Separator;
  const header = /^\uFEFF?\s*([^\r\n]*)/.exec(text)![1]!;
  return (/[,;\t]/.exec(header.replaceAll(/"[^"]*"/g, ''))?.[0] ?? ',') as Separator;
}

/** How many signs stand before the table: a byte order mark, and the line that states the separator. */
export function signsBeforeTable(text: string): number {
  return statement.exec(text)?.[0].length ?? (text.startsWith('\uFEFF') ? 1 : 0);
}
