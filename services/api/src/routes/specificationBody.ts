import type { FastifySchemaCompiler } from 'fastify';
import { validatorCompiler } from '../problems/validatorCompiler.ts';
import { specificationSchema } from '../specificationSchema.ts';

/**
 * Options of a route whose body is a search specification. The schema documents the body;
 * packages/search checks it, for the terminal too, and sees it as it was sent.
 */
const asSent: FastifySchemaCompiler<unknown> = (part) =>
  part.httpPart === 'body' ? (value) => ({ value }) : validatorCompiler(part);

export const specificationBody = {
  validatorCompiler: asSent,
  schema: { body: specificationSchema },
};
