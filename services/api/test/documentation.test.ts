import { readFileSync } from 'node:fs';
import { problems } from '@tiegel/contract/terms';
import { quantities } from '@tiegel/screening';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from './fixtures/testServer.ts';

interface Operation {
  summary?: string;
  tags?: string[];
  requestBody?: object;
  parameters?: { name: string; in: string; description?: string }[];
  responses: Record<string, { description: string; content?: Record<string, { schema: { $ref?: string } }> }>;
}
interface Document {
  openapi: string;
  paths: Record<string, Record<string, Operation>>;
  components: { schemas: Record<string, { properties: Record<string, { enum?: string[] }> }> };
}

let server: TestServer;
let document: Document;
const registered: string[] = [];
beforeAll(async () => {
  server = await testServer();
  document = (await server.ask({ url: '/api/v1/openapi.json' })).json();
  // The router's own list, drawn as a tree, is what is really answered.
  for (const [path, methods] of routesOf(server.app.printRoutes({ commonPrefix: false }))) {
    for (const method of methods) registered.push(`${method} ${path}`);
  }
});
afterAll(() => server.close());

/** Reads lines such as '├── /api/v1/searches (GET, HEAD)' of the router's drawing. */
function routesOf(drawing: string): [path: string, methods: string[]][] {
  const trail: string[] = [];
  const routes: [string, string[]][] = [];
  for (const line of drawing.split('\n')) {
    const found = /^([│ ]*)[├└]── (\S*)(?: \(([A-Z, ]+)\))?$/.exec(line);
    if (!found) continue;
    const depth = found[1]!.length / 4;
    trail.splice(depth, trail.length, found[2]!);
    if (found[3]) routes.push([trail.join(''), found[3].split(', ')]);
  }
  return routes;
}

const operations = () =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({
      name: `${method.toUpperCase()} ${path}`,
      operation,
    })),
  );

test('it is OpenAPI 3.1', () => {
  expect(document.openapi).toBe('3.1.0');
});

test('what is answered is documented, and what is documented is answered', async () => {
  const documented = operations().map(({ name }) => name);
  expect(documented.length).toBeGreaterThan(20);
  for (const name of documented) {
    const [method, path] = name.split(' ') as [string, string];
    expect(registered).toContain(`${method} ${path.replaceAll(/\{(\w+)\}/g, ':$1')}`);
  }
  const answered: string[] = [];
  for (const route of registered) {
    const [method, path] = route.split(' ') as ['GET', string];
    if (method === ('HEAD' as string) || path.includes('*')) continue;
    const answer = await server.ask({ method, url: path.replaceAll(/:\w+/g, 'x') });
    if (answer.statusCode !== 405) answered.push(`${method} ${path.replaceAll(/:(\w+)/g, '{$1}')}`);
  }
  expect(documented.toSorted()).toEqual(answered.toSorted());
});

test('the routes of the README are those of the document', () => {
  const text = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
  const listed = [...text.matchAll(/^\| `([A-Z]+) (\/\S*)` +\|/gm)].map(
    ([, method, path]) => `${method} ${path}`,
  );
  expect(listed.toSorted()).toEqual(
    operations()
      .map(({ name }) => name.replaceAll(/\{(\w+)\}/g, ':$1'))
      .toSorted(),
  );
});

test('every operation says what it does and how it is refused', () => {
  for (const { name, operation } of operations()) {
    expect(operation.summary, name).toBeTruthy();
    expect(operation.tags, name).toHaveLength(1);
    const refusals = Object.entries(operation.responses).filter(([status]) => status >= '400');
    expect(refusals.length, name).toBeGreaterThan(0);
    for (const [, { content, description }] of refusals) {
      expect(content).toEqual({
        'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } },
      });
      expect(description).not.toBe('Default Response');
    }
  }
});

test('every parameter is described', () => {
  for (const { name, operation } of operations()) {
    for (const parameter of operation.parameters ?? [])
      expect(parameter.description, `${name} ${parameter.name}`).toBeTruthy();
  }
});

test('a parameter that a route does not know is refused by every route, at its name', async () => {
  for (const { name, operation } of operations()) {
    const [method, path] = name.split(' ') as ['GET', string];
    const url = `${path.replaceAll(/\{\w+\}/g, '1')}?unheard=of`;
    const answer = await server.ask({ method, url });
    expect(answer.statusCode, name).toBe(400);
    // A body that is missing is told before the parameters are looked at.
    if (operation.requestBody && answer.json().faults[0].code !== 'request/unknown-key') continue;
    expect(answer.json().faults, name).toContainEqual(
      expect.objectContaining({ code: 'request/unknown-key', pointer: '/unheard' }),
    );
  }
});

test('the codes of problems are those of the one table', () => {
  const { code } = document.components.schemas.Problem!.properties;
  expect(code!.enum!.toSorted()).toEqual(Object.keys(problems).toSorted());
});

test('every quantity can be filtered and ordered by', () => {
  const { parameters } = document.paths['/api/v1/searches/{id}/candidates']!.get!;
  const names = parameters!.map(({ name }) => name);
  for (const { id } of quantities) expect(names).toEqual(expect.arrayContaining([`min.${id}`, `max.${id}`]));
});

test('every schema that is named is there', () => {
  const named = [...JSON.stringify(document).matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map(
    ([, name]) => name,
  );
  expect(named.length).toBeGreaterThan(10);
  expect(Object.keys(document.components.schemas)).toEqual(expect.arrayContaining(named as string[]));
});
