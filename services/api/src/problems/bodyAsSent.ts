import type { FastifySchemaCompiler } from 'fastify';
import { validatorCompiler } from './validatorCompiler.ts';

/**
 * For routes that check the body themselves and see it as it was sent: their schema of the body
 * documents it, and the other parts of the request are checked as everywhere.
 */
export const bodyAsSent: FastifySchemaCompiler<unknown> = (part) =>
  part.httpPart === 'body' ? (value) => ({ value }) : validatorCompiler(part);
