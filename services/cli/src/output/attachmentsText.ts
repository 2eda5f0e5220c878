import type { Attachment } from '@tiegel/contract';
import { inDigits } from '@tiegel/contract/terms';

/** Files of a melt for reading, each after the id by which it is fetched and taken away. */
export function* attachmentsText(all: readonly Attachment[]): Generator<string> {
  for (const { id, name, type, size } of all) yield `${id}  ${name}: ${type}, ${inDigits(size)} bytes\n`;
}
