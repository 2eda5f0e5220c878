import { expect, test } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../fixtures/tiegel.ts';

const specification = JSON.stringify({
  elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] },
  components: 4,
  fractions: { step: 20 },
  rank: [{ quantity: 'density', prefer: 'low' }],
});

test('the terminal shows its token to a service that asks for one, and is told what its role may', async () => {
  const folder = await temporaryFolder('tokens');
  const where = { environment: { DATA_DIR: folder.path } };
  const tokenOf = async (name: string, role: string): Promise<string> =>
    (await jsonOf(['access', 'give', name, '--role', role], where)).token;
  const author = await tokenOf('Ana', 'author');
  const api = await startApi({ dataFolder: folder.path, port: await freePort(), workers: 1, tokens: true });
  try {
    const start = (token: string) =>
      tiegel(['searches', 'start', '-'], {
        input: specification,
        environment: { TIEGEL_SERVER: api.url, TIEGEL_TOKEN: token },
      });
    const refusals = {
      '': '[access/no-token]',
      tiegel_guessed: '[access/unknown-token]',
      // Given out while the service runs.
      [await tokenOf('Rea', 'reader')]: '[access/role]',
    };
    for (const [token, code] of Object.entries(refusals))
      expect(await start(token)).toEqual({ code: 1, out: '', error: expect.stringContaining(code) });
    expect(await start(author)).toMatchObject({ code: 0, error: '' });
    await jsonOf(['access', 'withdraw', 'Ana'], where);
    expect((await start(author)).error).toContain('[access/unknown-token]');
  } finally {
    await api.kill();
    await folder.remove();
  }
});
