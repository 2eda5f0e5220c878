/** What stands between the fields of a table: a spreadsheet writes tabs when cells are copied, and semicolons where decimals have a comma. */
export type Separator = ',' | ';' | '\t';

/** The separator that stands first in the header, outside quotes; a comma where the header has but one column. */
export function separatorOf(text: string): Separator {
  const header = /^\uFEFF?\s*([^\r\n]*)/.exec(text)![1]!;
  return (/[,;\t]/.exec(header.replaceAll(/"[^"]*"/g, ''))?.[0] ?? ',') as Separator;
}
