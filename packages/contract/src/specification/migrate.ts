import { problem } from '../problem/problem.ts';

/** Turns a specification of one version into the next; `migrations[0]` leads from version 1 to 2. */
export type Migration = (specification: Record<string, unknown>) => Record<string, unknown>;

/** None yet. A change of meaning adds a version and its migration here; a published one never changes. */
const migrations: readonly Migration[] = [];

/**
 * A specification of an earlier version (stored, exported or sent), brought forward step by step
 * so that it keeps its meaning. What is no object is left to the checks that follow.
 * @throws ProblemError specification/version-unknown
 */
export function migrate(specification: unknown, steps: readonly Migration[] = migrations): unknown {
  if (typeof specification !== 'object' || specification === null || Array.isArray(specification)) {
    return specification;
  }
  const newest = steps.length + 1;
  const version = 'version' in specification ? specification.version : 1;
  if (!Number.isInteger(version) || (version as number) < 1 || (version as number) > newest) {
    throw problem('specification/version-unknown', { version: shown(version), newest }, '/version');
  }
  let current = specification as Record<string, unknown>;
  for (let from = version as number; from < newest; from++) {
    current = { ...steps[from - 1]!(current), version: from + 1 };
  }
  return current;
}

function shown(version: unknown): string {
  return typeof version === 'number' || typeof version === 'string'
    ? String(version).slice(0, 40)
    : 'not a number';
}
