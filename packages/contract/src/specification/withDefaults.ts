import { componentRange } from './components.ts';
import type { FractionsRequest } from './fractions.ts';
import type { SearchSpace } from './outsideSpace.ts';
import type { SearchRequest, SpaceRequest } from './requestSchema.ts';
import type { SearchSpecification } from './specification.ts';

/** A readable request with every default filled in. */
export function withDefaults(request: SearchRequest): SearchSpecification {
  return {
    version: 1,
    name: request.name?.trim() || 'Unnamed search',
    ...spaceWithDefaults(request),
    limits: request.limits ?? [],
    rank: request.rank,
    ...(request.front ? { front: request.front } : {}),
    ...(Object.keys(request.lets ?? {}).length > 0 ? { lets: request.lets! } : {}),
    ...((request.keptOnly ?? []).length > 0 ? { keptOnly: request.keptOnly! } : {}),
    ...(Object.keys(request.conditions ?? {}).length > 0 ? { conditions: request.conditions! } : {}),
    keep: request.keep ?? 1000,
    keepPerSystem: request.keepPerSystem ?? 0,
    tally: request.tally ?? 'each',
  };
}

/** The space alone, of a request or outside one. */
export function spaceWithDefaults({ elements, components, fractions }: SpaceRequest): SearchSpace {
  const { pool, require = [], forbid = [] } = elements;
  return {
    elements: { pool, require, forbid },
    components: componentRange(components),
    fractions: gridWithDefaults(fractions),
  };
}

function gridWithDefaults(fractions: FractionsRequest): SearchSpecification['fractions'] {
  if (fractions === 'equimolar') return fractions;
  const { step, min = step, max = 100, each = {} } = fractions;
  const given = Object.entries(each).flatMap(([symbol, bounds]) => (bounds ? [[symbol, bounds]] : []));
  return { step, min, max, each: Object.fromEntries(given) };
}
