import { post } from './request.ts';
import { type FormStorage, sentKey, unansweredKey } from './sentKey.ts';

/** What a form sends, and how it is known again. */
interface Sending<Body, Kept> {
  storage: FormStorage;
  /** its name, for the key */
  form: string;
  path: string;
  body: Body;
  /** whether what the server keeps is what this body asks for */
  isOf(kept: Kept, body: Body): boolean;
}

/**
 * Has the server keep what a form says, once. Where the answer to an earlier press was lost and the form was
 * changed since, the server is asked by the key of that press: `isBefore` says that `kept` is what it kept then.
 * The key holds until the form forgets it (forgetSent), so that no further press keeps a second one unasked.
 */
export async function postOnce<Body, Kept>({ storage, form, path, body, isOf }: Sending<Body, Kept>) {
  const text = JSON.stringify(body);
  const lost = unansweredKey(storage, form, text);
  const key = lost ?? sentKey(storage, form, text);
  const kept = await post<Kept>(path, body, { headers: { 'idempotency-key': key } });
  return { kept, isBefore: lost !== null && !isOf(kept, body) };
}
