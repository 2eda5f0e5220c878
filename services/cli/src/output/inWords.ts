import { lineWidth } from './table.ts';

/** A duration as a person says it. */
export function durationInWords(seconds: number): string {
  if (seconds < 1) return 'a second';
  if (seconds < 120) return `${Math.round(seconds)} s`;
  if (seconds < 7200) return `${Math.round(seconds / 60)} min`;
  if (seconds < 172_800) return `${Math.round(seconds / 3600)} h`;
  return `${Math.round(seconds / 86_400)} days`;
}

/** A long sentence in lines of at most `width` characters, broken between words. */
export function wrapped(sentence: string, width = lineWidth): string {
  const lines: string[] = [''];
  for (const word of sentence.split(' ')) {
    const line = lines.at(-1)!;
    if (line !== '' && line.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.join('\n');
}
