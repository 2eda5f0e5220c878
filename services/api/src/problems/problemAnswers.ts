import { problemSchema } from './problemBody.ts';

type ProblemStatus = 403 | 404 | 409 | 413 | 415 | 422 | 503;

/**
 * The problems that a route documents beside its answer. Any route may refuse a parameter that it
 * does not know (400), who sends no token (401), a foreign host or a role (403), or fail (500).
 */
export function problemAnswers<S extends ProblemStatus = never>(...statuses: S[]) {
  const every = [400, 401, 403, ...statuses, 500] as const;
  return Object.fromEntries(every.map((status) => [status, problemSchema])) as Record<
    400 | 401 | 403 | 500 | S,
    typeof problemSchema
  >;
}
