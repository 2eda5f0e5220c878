import { STATUS_CODES } from 'node:http';
import swagger from '@fastify/swagger';
import { jsonSchemaTransform, jsonSchemaTransformObject } from '@fastify/type-provider-zod';
import type { Server } from './parts.ts';

const description =
  'Every composition on a grid, counted, scored and ranked. Amounts are at.%, units stand in GET /api/v1/quantities. ' +
  'An error is application/problem+json (RFC 9457): each of its faults has a code of the one table, a JSON pointer, ' +
  'and what would be right.';

/** Collects the schemas of all routes registered after it into an OpenAPI 3.1 document. */
export async function documentRoutes(app: Server): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Tiegel', version: '1', description },
      components: { securitySchemes: { token: { type: 'http', scheme: 'bearer' } } },
      // None is asked for unless the service was started with TOKENS=yes.
      security: [{}, { token: [] }],
    },
    transform: jsonSchemaTransform,
    transformObject: (document) => asAnswered(onlyUsed(jsonSchemaTransformObject(document) as OpenApi)),
  });
}

/** What the plugin writes where a schema has no description. */
const unsaid = 'Default Response';

interface Answer {
  description: string;
  content?: Record<string, unknown>;
}
interface OpenApi {
  paths?: Record<string, Record<string, { responses?: Record<string, Answer> }>>;
  components?: { schemas?: Record<string, unknown> };
}

/** A route's schemas name neither the media type of its problems nor what a status means. */
function asAnswered(document: OpenApi): OpenApi {
  for (const methods of Object.values(document.paths ?? {})) {
    for (const { responses = {} } of Object.values(methods)) {
      for (const [status, answer] of Object.entries(responses)) {
        if (answer.description === unsaid) answer.description = STATUS_CODES[status] ?? unsaid;
        const [content] = Object.values(answer.content ?? {});
        if (status >= '400' && content !== undefined)
          answer.content = { 'application/problem+json': content };
      }
    }
  }
  return document;
}

/** Each shared schema comes once as it is sent and once as it is answered; those that nothing names go. */
function onlyUsed(document: OpenApi): OpenApi {
  const schemas = document.components?.schemas ?? {};
  const used = new Set<string>();
  const collect = (part: unknown) => {
    for (const [, name] of JSON.stringify(part).matchAll(/"#\/components\/schemas\/([^"]+)"/g)) {
      if (used.has(name!)) continue;
      used.add(name!);
      collect(schemas[name!]);
    }
  };
  collect(document.paths);
  const kept = Object.entries(schemas).filter(([name]) => used.has(name));
  return { ...document, components: { ...document.components, schemas: Object.fromEntries(kept) } };
}
