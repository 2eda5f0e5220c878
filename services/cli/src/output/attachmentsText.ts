import type { Attachment } from '@tiegel/contract';
import { grouped } from './inWords.ts';

/** Files of a melt for reading, each after the id by which it is fetched and taken away. */
export function* attachmentsText(all: readonly Attachment[]): Generator<string> {
  for (const { id, name, type, size } of all) yield `${id}  ${name}: ${type}, ${grouped(size)} bytes\n`;
}
