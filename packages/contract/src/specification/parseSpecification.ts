import { jsonPointer } from '../problem/jsonPointer.ts';
import { type Fault, fault, ProblemError } from '../problem/problem.ts';

/** So many are named; who wrote more mends these first. */
const mostNamed = 100;
/** All that the scan looks at; numbers, true, false and null say nothing about keys. */
const token = /"(?:[^"\\]|\\.)*"|[{}[\],:]/g;

/**
 * The value of a specification's text. JSON's own reader takes the last of two equal keys silently,
 * so that a limit that somebody wrote would not hold. Throws a SyntaxError for what is no JSON, and
 * request/key-twice for every key that stands in its object already.
 */
export function parseSpecification(text: string): unknown {
  const value: unknown = JSON.parse(text);
  const faults = keysTwice(text);
  if (faults.length > 0) throw new ProblemError(faults);
  return value;
}

/** @param text is JSON, or the scan would mean nothing */
function keysTwice(text: string): Fault[] {
  const faults: Fault[] = [];
  /** The objects and lists around the place: the keys so far, null in a list, and the key or index there. */
  const around: { keys: Set<string> | null; step: string | number }[] = [];
  let lastText = '';
  for (const [word] of text.matchAll(token)) {
    const here = around.at(-1);
    if (word === '{') around.push({ keys: new Set(), step: '' });
    else if (word === '[') around.push({ keys: null, step: 0 });
    else if (word === '}' || word === ']') around.pop();
    else if (word === ',' && typeof here?.step === 'number') here.step += 1;
    else if (word === ':' && here?.keys) {
      const key = JSON.parse(lastText) as string;
      here.step = key;
      if (here.keys.has(key)) faults.push(fault('request/key-twice', { key }, pointerTo(around)));
      here.keys.add(key);
    } else lastText = word;
    if (faults.length === mostNamed) break;
  }
  return faults;
}

const pointerTo = (around: readonly { step: string | number }[]): string =>
  jsonPointer(around.map(({ step }) => step));
