import type { ServerResponse } from 'node:http';

/** Answers that have begun, each with the token that it was begun for. */
export interface AnswersUnderWay {
  /** Keeps an answer in sight until it ends. */
  add(token: string, answer: ServerResponse): void;
  /** Breaks off those whose token has ended. */
  endWithdrawn(): void;
}

/**
 * A token that is withdrawn ends what it began, too: a stream of events stays open for as long as its search takes,
 * an export for as long as its reader does. They are broken off, so that no export looks whole that is not.
 *
 * @param inForce may throw where that cannot be told: answers then go on until it can
 */
export function answersUnderWay(inForce: (token: string) => boolean): AnswersUnderWay {
  const open = new Map<ServerResponse, string>();
  return {
    add(token, answer) {
      open.set(answer, token);
      answer.once('close', () => open.delete(answer));
    },
    endWithdrawn() {
      for (const [answer, token] of open) {
        // One that waits behind another of its connection is not told that this was closed.
        if (answer.req.socket?.destroyed) open.delete(answer);
        else if (!inForce(token)) answer.req.socket.destroy();
      }
    },
  };
}
