import type { FastifyRequest } from 'fastify';

/**
 * The cookie that holds the token of a browser that signed in. Over TLS its name makes browsers take it from this
 * very server alone (RFC 6265bis, 4.1.3.2): neither another host of the same domain nor a page without TLS can slip
 * somebody a token, under which they would then write.
 */
export function tokenCookie(request: FastifyRequest): string {
  return isEncrypted(request) ? '__Host-tiegel-token' : 'tiegel-token';
}

/** Whether the browser speaks TLS, with this server or with a proxy before it, which says so. */
export function isEncrypted({ protocol, headers }: FastifyRequest): boolean {
  return protocol === 'https' || /^https *(?:,|$)/i.test(String(headers['x-forwarded-proto'] ?? ''));
}

/** The token of a request: of its Authorization header (RFC 6750), else of its cookie; null where it sends none. */
export function sentToken(request: FastifyRequest): string | null {
  const { authorization, cookie } = request.headers;
  const bearer = /^Bearer +(\S+) *$/i.exec(authorization ?? '');
  if (bearer) return bearer[1]!;
  const sought = tokenCookie(request);
  for (const pair of (cookie ?? '').split(';')) {
    const [name, value] = pair.split('=', 2);
    if (name!.trim() === sought && value) return value.trim();
  }
  return null;
}
