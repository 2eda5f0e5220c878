import type { Fault } from '@tiegel/contract';

export const apiRoot = '/api/v1';

/** An answer of the server that is an error, with each thing that is wrong. */
export class ServerProblem extends Error {
  readonly status: number;
  readonly code: string;
  readonly faults: readonly Fault[];

  constructor(status: number, code: string, detail: string, faults: readonly Fault[]) {
    super(detail);
    this.name = 'ServerProblem';
    this.status = status;
    this.code = code;
    this.faults = faults;
  }
}

/** Nothing answered at all: the server is stopped, or the network to it is cut. */
export class NoAnswer extends Error {
  constructor(cause: unknown) {
    super('The server does not answer.', { cause });
    this.name = 'NoAnswer';
  }
}

interface RequestOptions {
  method?: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  body?: string | Blob;
  type?: string;
  headers?: Record<string, string>;
  signal?: AbortSignal | undefined;
  /** ms after which no answer is taken for none at all: a connection may be dead without a word */
  patience?: number;
}

/**
 * Asks the server and reads its JSON (null for an empty answer). Throws ServerProblem for an
 * answer that is an error, NoAnswer where none comes.
 */
export async function request<T>(path: string, options: RequestOptions = {}): Promise<T> {
  const { method = 'GET', body, type = 'application/json', headers = {}, signal = null, patience } = options;
  const sent = body === undefined ? headers : { ...headers, 'content-type': type };
  const signals = [signal, patience === undefined ? null : AbortSignal.timeout(patience)];
  const until = AbortSignal.any(signals.filter((one) => one !== null));
  const [response, text] = await fetch(apiRoot + path, {
    method,
    headers: sent,
    body: body ?? null,
    signal: until,
  })
    .then(async (answer) => [answer, await answer.text()] as const)
    .catch((error: unknown) => {
      if (signal?.aborted) throw error;
      throw new NoAnswer(error);
    });
  if (!response.ok) throw problemOf(response, text);
  return (text === '' ? null : JSON.parse(text)) as T;
}

/** Sends a value as JSON. */
export function post<T>(
  path: string,
  value: unknown,
  options: Omit<RequestOptions, 'body' | 'method'> = {},
): Promise<T> {
  return request<T>(path, { ...options, method: 'POST', body: JSON.stringify(value) });
}

function problemOf(response: Response, text: string): ServerProblem | NoAnswer {
  // A gateway before the server answers 502 to 504 in words of its own: the server itself is out of reach.
  const isProblem = response.headers.get('content-type')?.startsWith('application/problem+json');
  if (!isProblem && response.status >= 502 && response.status <= 504) return new NoAnswer(text);
  if (!isProblem)
    return new ServerProblem(response.status, 'server/fault', `The server answered ${response.status}.`, []);
  const { code, detail, faults } = JSON.parse(text) as { code: string; detail: string; faults: Fault[] };
  return new ServerProblem(response.status, code, detail, faults);
}
