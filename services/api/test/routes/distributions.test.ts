import { afterAll, beforeAll, expect, test } from 'vitest';
import { fixtureSearch, type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({}, { maxPoints: 1e13 });
});
afterAll(() => server.close());

const post = (payload: object) => server.ask({ method: 'POST', url: '/api/v1/distributions', payload });

test('a sample of the grid tells what each limit leaves, near what an independent script counted', async () => {
  const { specification, expected } = fixtureSearch('six-5pct-omega');
  const { points, passed, passedEach } = expected.counts;
  const answer = await post({ specification, sample: 4000, seed: 2 });
  expect(answer.statusCode).toBe(200);
  const found = answer.json();
  expect(found).toMatchObject({ points, sample: 4000, seed: 2 });
  expect(Math.abs(found.passed - passed! / points)).toBeLessThan(2 * found.error);
  // Five standard deviations of a share near a half.
  for (const [limit, count] of passedEach!.entries()) {
    expect(Math.abs(found.limits[limit].share - count / points)).toBeLessThan(5 * Math.sqrt(0.25 / 4000));
  }
  expect((await post({ specification, sample: 4000, seed: 2 })).json()).toEqual(found);
});

test('a fault of the specification is a problem with its place in the body', async () => {
  const { specification } = fixtureSearch('six-5pct-omega');
  const answer = await post({ specification: { ...specification, components: 'six' } });
  expect(answer.statusCode).toBe(400);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  expect(answer.json().faults).toMatchObject([{ pointer: '/specification/components' }]);
});
