import { accessSchema } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { isEncrypted, tokenCookie } from '../access/sentToken.ts';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const path = '/access';
const tags = ['service'];
const thirtyDaysSeconds = 30 * 24 * 3600;

/** /access: who asks. A browser signs in by POST, upon which its cookie holds the token, and out by DELETE. */
export function accessRoutes(app: Server, { tokens }: Parts): void {
  const view = (holder: FastifyRequest['holder']) => ({
    asked: tokens !== null,
    name: holder?.name ?? null,
    role: holder?.role ?? null,
  });

  app.get(
    path,
    {
      schema: {
        summary: 'Who asks, and what they may do',
        tags,
        response: { 200: accessSchema, ...problemAnswers() },
      },
    },
    (request) => view(request.holder),
  );

  app.post(
    path,
    {
      schema: {
        summary: 'Signs a browser in: its cookie holds the token for 30 days, for this server alone',
        description: 'Programs need no cookie; they send the header "Authorization: Bearer TOKEN".',
        tags,
        body: z.strictObject({
          token: z.string().trim().min(1).max(200).describe('Write the token as it was given to you.'),
        }),
        response: { 200: accessSchema, ...problemAnswers(413, 415) },
      },
    },
    (request, reply) => {
      if (tokens === null) return view(null);
      const { token } = request.body;
      const holder = tokens.holderOf(token);
      if (holder === null) throw problem('access/unknown-token');
      reply.header('set-cookie', cookieOf(request, token, thirtyDaysSeconds));
      return view(holder);
    },
  );

  app.delete(
    path,
    {
      schema: {
        summary: 'Signs a browser out',
        tags,
        response: { 200: accessSchema, ...problemAnswers() },
      },
    },
    (request, reply) => {
      reply.header('set-cookie', cookieOf(request, '', 0));
      return view(null);
    },
  );
}

/** No script of a page reads it (HttpOnly), no other site makes a browser send it (SameSite). */
function cookieOf(request: FastifyRequest, value: string, seconds: number): string {
  const named = `${tokenCookie(request)}=${value}`;
  const words = [named, 'Path=/', 'HttpOnly', 'SameSite=Strict', `Max-Age=${seconds}`];
  return [...words, ...(isEncrypted(request) ? ['Secure'] : [])].join('; ');
}
