import { faultsOf, ProblemError } from '@tiegel/contract';
import type { FastifySchemaCompiler } from 'fastify';
import type { z } from 'zod';

/**
 * Checks one part of a request (body, query, path, headers) by its schema, and states what is
 * wrong as faults of the one table, each with its pointer and what would be right. Takes the
 * place of the type provider's own compiler, whose pointers stop at the object around a key.
 */
export const validatorCompiler: FastifySchemaCompiler<unknown> = (part) => {
  const schema = part.schema as z.ZodType;
  return (data) => {
    const result = schema.safeParse(data);
    return result.success ? { value: result.data } : { error: new ProblemError(faultsOf(schema, data)) };
  };
};
