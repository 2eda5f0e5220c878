import type { Explanation, Paragraph } from '@tiegel/insight';
import { wrapped } from './inWords.ts';
import { lineWidth } from './table.ts';

const indent = '  ';

/** An explanation for reading: each paragraph under its heading, then how far to trust it and its sources. */
export function* explanationText({ paragraphs }: Explanation): Generator<string> {
  for (const [place, paragraph] of paragraphs.entries()) {
    if (place > 0) yield '\n';
    yield* linesOf(paragraph);
  }
}

function* linesOf({ heading, text, trust, sources }: Paragraph): Generator<string> {
  yield `${heading}\n`;
  yield indented(text);
  if (trust !== null) yield indented(`Trust: ${trust}`);
  for (const source of sources) yield indented(`Source: ${source}`, indent.repeat(2));
}

function indented(text: string, by = indent): string {
  const lines = wrapped(text, lineWidth - by.length).split('\n');
  return `${lines.map((line) => by + line).join('\n')}\n`;
}
