import { type Fault, ProblemError, problem, problems } from '@tiegel/contract/terms';
import { z } from 'zod';
import { tokenHeader } from './tokenHeader.ts';

/** What is asked: a path below /api/v1, and what is sent, as JSON or as the file that it is. */
export interface Asked {
  method: 'GET' | 'POST' | 'PUT' | 'DELETE';
  path: string;
  body?: unknown;
  file?: Buffer<ArrayBuffer>;
}

const longestWait = 60_000;

const warned = new Set<string>();

/** A command may ask several times. */
function warnOnce(text: string): void {
  if (!warned.has(text)) console.error(text);
  warned.add(text);
}

const refusal = z.object({
  faults: z
    .array(
      z.object({
        code: z.string().refine((code) => Object.hasOwn(problems, code)),
        ...{ pointer: z.string(), detail: z.string(), remedy: z.string() },
      }),
    )
    .min(1),
});

/**
 * Asks a running service and reads its answer in the form that is expected.
 * @throws ProblemError what the service says is wrong, in its words; server/out-of-reach; server/other-answer
 */
export async function askServer<Answer>(
  address: string,
  asked: Asked,
  form: z.ZodType<Answer>,
): Promise<Answer> {
  const answer = await answerOf(address, asked);
  const { success, data } = form.safeParse(jsonIn(await bodyOf(answer, address)));
  if (success) return data;
  throw problem('server/other-answer', { address, status: answer.status });
}

/**
 * Asks a running service for what is no JSON.
 * @throws ProblemError what the service says is wrong, in its words; server/out-of-reach; server/other-answer
 */
export async function answerOf(address: string, { method, path, body, file }: Asked): Promise<Response> {
  const type = file === undefined ? 'application/json' : 'application/octet-stream';
  const answer = await sent(address, `${address}/api/v1${path}`, {
    method,
    // A service sends nobody elsewhere; what answers so is not told what was meant for it.
    redirect: 'manual',
    signal: AbortSignal.timeout(longestWait),
    headers: {
      ...(body === undefined && file === undefined ? {} : { 'content-type': type }),
      ...tokenHeader(address, warnOnce),
    },
    ...(body === undefined && file === undefined ? {} : { body: file ?? JSON.stringify(body) }),
  });
  if (answer.ok) return answer;
  const { success, data } = refusal.safeParse(jsonIn(await bodyOf(answer, address)));
  if (success) throw new ProblemError(data.faults as Fault[]);
  throw problem('server/other-answer', { address, status: answer.status });
}

function bodyOf(answer: Response, address: string): Promise<string> {
  return answer.text().catch((error: Error) => {
    throw problem('server/out-of-reach', { address, why: whyOf(error) });
  });
}

async function sent(address: string, url: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(url, request);
  } catch (error) {
    throw problem('server/out-of-reach', { address, why: whyOf(error as Error) });
  }
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Why nothing answers, in words; fetch tells it as the cause of its error. */
function whyOf({ name, message, cause }: Error): string {
  if (name === 'TimeoutError') return `no answer within ${longestWait / 1000} s`;
  const { code, message: reason } = (cause ?? {}) as NodeJS.ErrnoException;
  if (code?.startsWith('ERR_SSL_')) return 'it speaks no TLS; try its address with http:// in front';
  const words: Record<string, string> = {
    ECONNREFUSED: 'nothing listens there',
    ENOTFOUND: 'no computer has this name',
    EAI_AGAIN: 'no computer has this name',
    ECONNRESET: 'the connection was broken off',
    EHOSTUNREACH: 'the computer is out of reach',
  };
  return words[code ?? ''] ?? (reason || message);
}
