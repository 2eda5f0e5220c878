import type { FastifyRequest } from 'fastify';

/** Holds the token of a browser that signed in. */
export const tokenCookie = 'tiegel-token';

/** The token of a request: of its Authorization header (RFC 6750), else of its cookie; null where it sends none. */
export function sentToken({ headers }: FastifyRequest): string | null {
  const bearer = /^Bearer +(\S+) *$/i.exec(headers.authorization ?? '');
  if (bearer) return bearer[1]!;
  for (const pair of (headers.cookie ?? '').split(';')) {
    const [name, value] = pair.split('=', 2);
    if (name!.trim() === tokenCookie && value) return value.trim();
  }
  return null;
}
