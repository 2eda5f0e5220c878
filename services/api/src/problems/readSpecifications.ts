import { parseSpecification } from '@tiegel/contract/terms';
import type { FastifyInstance } from 'fastify';
import { readJson } from './readJson.ts';

/** In this scope, JSON bodies are specifications: a key that stands twice is refused, not taken as it stands last. */
export function readSpecifications(app: FastifyInstance): void {
  app.removeContentTypeParser('application/json');
  readJson(app, parseSpecification);
}
