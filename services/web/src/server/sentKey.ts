import { randomKey } from './randomKey.ts';

/** Where a form keeps what is typed in it: in this tab, or in this browser. Its key is kept in the same place. */
export type FormStorage = 'sessionStorage' | 'localStorage';

/** A key that was sent, and the mark of the text that it was sent with. */
interface Sent {
  mark: string;
  key: string;
}

/** What a browser that refuses storage is told to keep: lost on a reload, as the form is. */
const remembered = new Map<string, string>();

/**
 * The key by which the server knows what a form sends, so that it is stored once: the same text gets the
 * same key, after a reload too, until `forgetSent` says that the answer came. Another text gets a new one.
 */
export function sentKey(storage: FormStorage, form: string, text: string): string {
  const place = placeOf(form);
  const mark = markOf(text);
  const before = read(storage, place);
  if (before?.mark === mark) return before.key;
  const key = randomKey();
  write(storage, place, JSON.stringify({ mark, key } satisfies Sent));
  return key;
}

/** The key of what a form sent before and got no answer to, where that was another text; null otherwise. */
export function unansweredKey(storage: FormStorage, form: string, text: string): string | null {
  const before = read(storage, placeOf(form));
  return before === null || before.mark === markOf(text) ? null : before.key;
}

/** The answer came: what is sent from now on is meant anew. */
export function forgetSent(storage: FormStorage, form: string): void {
  const place = placeOf(form);
  remembered.delete(place);
  try {
    globalThis[storage].removeItem(place);
  } catch {
    // Nothing is kept where nothing can be.
  }
}

const placeOf = (form: string): string => `tiegel.sent.${form}`;

function read(storage: FormStorage, place: string): Sent | null {
  let text = remembered.get(place) ?? null;
  try {
    text ??= globalThis[storage].getItem(place);
    return text === null ? null : (JSON.parse(text) as Sent);
  } catch {
    return null;
  }
}

function write(storage: FormStorage, place: string, text: string): void {
  remembered.delete(place);
  try {
    globalThis[storage].setItem(place, text);
  } catch {
    remembered.set(place, text);
  }
}

/**
 * Tells texts apart without keeping them: an import may be as large as the storage of a browser. Length
 * and two 32-bit FNV-1a sums (offset basis 2166136261, prime 16777619; the second begins elsewhere):
 * for the few texts of one form, two that agree by chance do not happen.
 */
function markOf(text: string): string {
  return [text.length, fnv(text, 2_166_136_261), fnv(text, 3_421_674_724)].join('-');
}

function fnv(text: string, basis: number): number {
  let sum = basis;
  for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 16_777_619);
  return sum >>> 0;
}
