import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import { isOwnFault, problemBody } from './problemBody.ts';

export const bodyLimitBytes = 1 << 20;
/** After which whoever was refused for want of a place may ask again. */
const busySeconds = 5;

const ofTheAnswerMeant = ['content-disposition', 'content-length', 'etag', 'last-modified'];

/** Answers with faults as application/problem+json. */
export function answerFaults(reply: FastifyReply, faults: readonly Fault[]): FastifyReply {
  const body = problemBody(faults);
  if (body.code === 'server/busy') reply.header('retry-after', busySeconds);
  // RFC 9110 11.6.1 wants it of every 401.
  if (body.status === 401) reply.header('www-authenticate', 'Bearer');
  // A route may have said them of the answer that it meant to give.
  for (const name of ofTheAnswerMeant) reply.removeHeader(name);
  return reply
    .header('cache-control', 'no-store')
    .code(body.status)
    .type('application/problem+json')
    .serializer((value: unknown) => JSON.stringify(value))
    .send(body);
}

/** What the framework refuses before a route sees the request, in the words of the table. */
function faultOfFramework(error: FastifyError, request: FastifyRequest): Fault | null {
  switch (error.code) {
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return fault('request/content-type', {
        found: request.headers['content-type'] ?? 'not stated',
        accepted: acceptedBy(request),
      });
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return fault('request/too-large', { limit: request.routeOptions.bodyLimit ?? bodyLimitBytes });
    default:
      return error.statusCode !== undefined && error.statusCode >= 400 && error.statusCode < 500
        ? fault('request/unreadable', { what: error.message })
        : null;
  }
}

function acceptedBy(request: FastifyRequest): string {
  const { consumes } = (request.routeOptions.schema ?? {}) as { consumes?: readonly string[] };
  return (consumes ?? ['application/json']).join(' or ');
}

/**
 * The one place where an error becomes an answer. What the request did wrong is told whole; what
 * failed here is written to the log under the request's id, and the answer names that id alone.
 */
export function answerError(error: unknown, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (error instanceof ProblemError) {
    if (error.faults.some(isOwnFault)) request.log.error({ err: error }, 'request failed');
    return answerFaults(reply, error.faults);
  }
  const known = error instanceof Error ? faultOfFramework(error as FastifyError, request) : null;
  if (known !== null) return answerFaults(reply, [known]);
  request.log.error({ err: error }, 'request failed');
  return answerFaults(reply, [fault('server/fault', { id: request.id })]);
}
