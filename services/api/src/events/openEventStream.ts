import type { ServerResponse } from 'node:http';

/** The newest state of one thing; `id` comes back as Last-Event-ID when a browser connects again. */
interface StreamEvent {
  id: number;
  name: string;
  data: unknown;
}

export interface EventStream {
  /** Shows a state, as soon as pace and reader allow; a newer one takes the place of one not yet sent. */
  show(event: StreamEvent): void;
  /** Sends what still waits, then ends. */
  end(): void;
}

export interface Pace {
  /** Two events are at least this far apart, but for the last one. */
  gapMs: number;
  /** A comment line this often keeps proxies from closing a quiet stream. */
  commentMs: number;
}

/**
 * Opens a stream of server-sent events (WHATWG HTML, section 9.2) on a response. States, not
 * changes, are sent: whoever reads slowly or comes late misses steps, never the outcome.
 * `onClose` is called once, whichever side ends the stream.
 */
export function openEventStream(response: ServerResponse, pace: Pace, onClose: () => void): EventStream {
  let waiting: StreamEvent | null = null;
  let timer: NodeJS.Timeout | null = null;
  let writable = true;

  const write = (text: string) => {
    if (!response.writableEnded) writable = response.write(text);
  };
  const flush = () => {
    if (waiting === null || timer !== null || !writable) return;
    write(asText(waiting));
    waiting = null;
    timer = setTimeout(() => {
      timer = null;
      flush();
    }, pace.gapMs);
  };

  response.writeHead(200, {
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
  });
  write('retry: 2000\n\n');
  const comments = setInterval(() => write(': still here\n\n'), pace.commentMs);
  response.on('drain', () => {
    writable = true;
    flush();
  });
  response.once('close', () => {
    clearInterval(comments);
    if (timer !== null) clearTimeout(timer);
    onClose();
  });
  return {
    show(event) {
      waiting = event;
      flush();
    },
    end() {
      if (waiting !== null) write(asText(waiting));
      response.end();
    },
  };
}

function asText({ id, name, data }: StreamEvent): string {
  return `id: ${id}\nevent: ${name}\ndata: ${JSON.stringify(data)}\n\n`;
}
