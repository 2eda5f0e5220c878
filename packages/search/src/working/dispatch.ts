import type { Chunk } from '@tiegel/contract';
import { cutOffOf } from '@tiegel/engine';
import type { ChunkQueue } from '@tiegel/queue';
import { alarm } from './alarm.ts';
import { textOf } from './textOf.ts';
import { inOrderOfPriority, restReason, rests } from './timetable.ts';
import { giveBack, type Underway } from './underway.ts';

/** Chunks under way for each worker: one that is scored and one that waits, so that no worker idles. */
const chunksPerWorker = 2;
/** How often workers that come or go are noticed, ms. */
const lookAgainMs = 1000;
/** Waiting time after a failure to hand anything over: doubled each time, ms. */
const backOffMs = { first: 250, most: 8000 };

/** Hands the chunks of all searches to the workers, a chunk of each search in turn. */
export interface Dispatcher {
  add(search: Underway): void;
  remove(search: Underway): void;
  /** Something changed: chunks came back, or were finished. */
  wake(): void;
  /** Resolves when nothing is being handed over any more. */
  close(): Promise<void>;
}

/** What the dispatcher tells: that a search's chunk is with the workers, and why nothing can be handed out (null: it can again), and that a search rests. */
export interface DispatchListener {
  handedOut(search: Underway): void;
  held(search: Underway, reason: string | null): void;
  /** It is outside its hours, and no chunk of it is with the workers any more. */
  resting(search: Underway): void;
  /** Resolves when what is told can be written down. */
  writable(): Promise<void>;
}

const noWorker = 'No worker is present; the search goes on as soon as one is.';

export function dispatcher(queue: ChunkQueue, listener: DispatchListener): Dispatcher {
  const searches = new Set<Underway>();
  let turns: Underway[] = [];
  /** Tasks sent, of all searches: numbers them. A search that is resumed goes on with numbers that nobody had. */
  let sent = 0;
  let closed = false;
  const bell = alarm();

  const chunksUnderWay = () => [...searches].reduce((sum, search) => sum + search.inFlight.size, 0);

  /** The search whose turn it is and its next chunk; null when no chunk waits. */
  function nextTurn(): { search: Underway; chunk: Chunk } | null {
    const now = new Date();
    for (const search of inOrderOfPriority(turns)) {
      if (rests(search, now)) continue;
      const chunk = search.chunks.next();
      if (chunk === null) continue;
      turns = [...turns.filter((other) => other !== search), search];
      return { search, chunk };
    }
    return null;
  }

  /** Whether a search was stopped, or is over, since its turn came. */
  const isGone = (search: Underway) => search.stop.signal.aborted || !searches.has(search);

  /**
   * Rejects where the search was stopped meanwhile. Its withdrawal may have reached the carrier before
   * the announcement, so it is withdrawn once more; not at the end of the program, when workers may finish.
   */
  async function announce(search: Underway): Promise<void> {
    await queue.announce(search.id, search.plan);
    if (!isGone(search)) return;
    if (!closed) await queue.withdraw(search.id).catch(() => {});
    throw new Error(`search ${search.id} was stopped while it was announced`);
  }

  async function send(search: Underway, chunk: Chunk): Promise<void> {
    const before = search.since;
    // Before it is sent: the report may come first.
    search.inFlight.set(chunk.ordinal, chunk);
    sent += 1;
    const attempt = sent;
    try {
      if (!search.announced) await announce(search);
      search.announced = true;
      search.since ??= performance.now();
      const cutOff = cutOffOf(search.outcome, search.ranking);
      await queue.send({ searchId: search.id, chunk, attempt, cutOff });
    } catch (error) {
      search.since = before;
      giveBack(search, [chunk.ordinal]);
      throw error;
    }
  }

  /** Why nobody takes a chunk: the carrier is out of reach, or nobody is there. */
  async function whyNobody(): Promise<string> {
    const [search] = turns;
    if (search === undefined) return noWorker;
    return announce(search).then(
      () => noWorker,
      (error) => (isGone(search) ? noWorker : textOf(error)),
    );
  }

  /** Hands out what the workers have room for. Returns why it could not, null where it could. */
  async function handOut(): Promise<string | null> {
    const workers = await queue.workers();
    if (workers === 0) return whyNobody();
    while (!closed && chunksUnderWay() < chunksPerWorker * workers) {
      const turn = nextTurn();
      if (turn === null) break;
      try {
        await send(turn.search, turn.chunk);
      } catch (error) {
        if (isGone(turn.search)) continue;
        return textOf(error);
      }
      if (!isGone(turn.search)) listener.handedOut(turn.search);
    }
    return null;
  }

  function tell(search: Underway, reason: string | null): void {
    const rest = restReason(search, new Date());
    listener.held(search, rest ?? reason);
    if (rest !== null && search.inFlight.size === 0) listener.resting(search);
  }

  async function run(): Promise<void> {
    let backOff = 0;
    while (!closed) {
      const rung = bell.next();
      if (searches.size > 0) await listener.writable();
      const reason = searches.size === 0 ? null : await handOut().catch(textOf);
      for (const search of searches) tell(search, reason);
      backOff = reason === null ? 0 : Math.min(backOffMs.most, backOff * 2 || backOffMs.first);
      await rung(searches.size === 0 ? null : backOff || lookAgainMs);
    }
  }
  const running = run();

  return {
    add(search) {
      searches.add(search);
      turns.push(search);
      bell.ring();
    },
    remove(search) {
      searches.delete(search);
      turns = turns.filter((other) => other !== search);
      bell.ring();
    },
    wake: bell.ring,
    async close() {
      closed = true;
      bell.ring();
      await running;
    },
  };
}
