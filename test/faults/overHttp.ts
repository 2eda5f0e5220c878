import type { Candidate, CandidatePage, Counts, SearchView } from '@tiegel/contract';
import { until } from '../fixtures/until.ts';

/** All that a search has found: what must not depend on what was killed meanwhile. */
export interface Found {
  counts: Counts;
  candidates: Candidate[];
}

/** Asks the api, by POST where there is a body. Throws with its answer unless that is a success. */
export async function ask<T>(address: string, body?: unknown): Promise<T> {
  const headers = { 'content-type': 'application/json' };
  const post = body === undefined ? {} : { method: 'POST', headers, body: JSON.stringify(body) };
  const answer = await fetch(address, post);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}: ${await answer.text()}`);
  return (await answer.json()) as T;
}

export async function startSearch(url: string, specification: unknown): Promise<string> {
  const { id } = await ask<{ id: string }>(`${url}/api/v1/searches`, specification);
  return id;
}

export const view = (url: string, id: string): Promise<SearchView> => ask(`${url}/api/v1/searches/${id}`);

/** Share of the grid points that count as done, 0 to 1. */
export async function shareDone(url: string, id: string): Promise<number> {
  const { progress } = await view(url, id);
  return progress.points / progress.total;
}

/** Waits until the search is done. Throws when it fails or is cancelled, or after `seconds`. */
export async function whenDone(url: string, id: string, seconds = 180): Promise<void> {
  await until(
    `search ${id} is done`,
    async () => {
      const { state, reason } = await view(url, id);
      if (state === 'failed' || state === 'cancelled') throw new Error(`Search ${id} is ${state}: ${reason}`);
      return state === 'done';
    },
    { seconds, everyMs: 200 },
  );
}

/** Counts and every candidate row, page by page. */
export async function found(url: string, id: string): Promise<Found> {
  const { counts } = await view(url, id);
  const candidates: Candidate[] = [];
  let next: string | null = '';
  while (next !== null) {
    const after: string = next === '' ? '' : `&after=${encodeURIComponent(next)}`;
    const page: CandidatePage = await ask(`${url}/api/v1/searches/${id}/candidates?limit=1000${after}`);
    candidates.push(...page.items);
    next = page.next;
  }
  return { counts, candidates };
}

/** Scoring threads that the api sees. */
export async function threadsPresent(url: string): Promise<number> {
  const { workers } = await ask<{ workers: number | null }>(`${url}/ready`);
  return workers ?? 0;
}
