import { afterAll, beforeAll, expect, test } from 'vitest';
import project from '../../../../package.json' with { type: 'json' };
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

test.each(['/health', '/api/v1/health'])(
  '%s names the version that a report of a fault needs',
  async (url) => {
    expect((await server.ask({ url })).json()).toEqual({
      ...{ status: 'running', version: project.version, openNetwork: false },
      uptimeSeconds: expect.any(Number),
    });
  },
);
