import type { Chunk, Outcome, Plan } from '@tiegel/contract';

/** A chunk on its way to a worker. `attempt` is never the same for two dispatches of a chunk through one queue, whatever failed, was paused or resumed in between; `cutOff` is the score that a kept point must reach, null while fewer than `keep` are known. */
export interface Task {
  searchId: string;
  chunk: Chunk;
  attempt: number;
  cutOff: number | null;
}

/** What became of a task. `failed` means that scoring threw; the dispatcher decides whether to try again. */
export type Report =
  | { kind: 'done'; searchId: string; ordinal: number; outcome: Outcome; scoringSeconds: number }
  | { kind: 'stopped'; searchId: string; ordinal: number }
  | { kind: 'failed'; searchId: string; ordinal: number; reason: string };

/**
 * How chunks reach workers. Two adapters keep this promise and share one conformance suite: the
 * threads of this process, and BullMQ on Redis with worker processes anywhere. The queue only
 * carries work: losing all of it loses nothing, for the ledger dispatches unfinished chunks anew.
 * A report may come twice or not at all; it never comes for a chunk that was not scored whole.
 */
export interface ChunkQueue {
  /** Makes a search's plan known to the workers; again is harmless. Rejects when the carrier is out of reach. */
  announce(searchId: string, plan: Plan): Promise<void>;
  /** Hands a task over. Rejects, without having taken it, when the carrier is out of reach. */
  send(task: Task): Promise<void>;
  /** The one collector of reports. */
  onReport(listener: (report: Report) => void): void;
  /** Called whenever tasks sent and not yet reported were lost (the carrier came back empty): send all of them again. */
  onLoss(listener: () => void): void;
  /** Scoring threads present now, over all workers; 0 when there is none, or the carrier is out of reach. */
  workers(): Promise<number>;
  /**
   * Stops scoring the search's chunks soon and forgets its plan. Each task not yet reported is
   * reported as stopped before this resolves; after it nothing more comes of the search, until it
   * is announced again: then chunks that were scored all the same are still reported as done.
   */
  withdraw(searchId: string): Promise<void>;
  /** Ends at once and within a bounded time, whatever state the carrier is in. */
  close(): Promise<void>;
}
