import { once } from 'node:events';
import { get, type IncomingMessage } from 'node:http';
import { openTokens } from '@tiegel/search/laboratory';
import { openStore } from '@tiegel/store';
import { expect, test } from 'vitest';
import { readConfiguration } from '../../src/configuration.ts';
import { listen } from '../../src/listen.ts';
import { fixtureSearch, testServer } from '../fixtures/testServer.ts';

test('a stream of events ends within seconds when its token is withdrawn; those of others go on', async () => {
  const store = openStore({ file: null, columns: [] });
  const tokens = openTokens(store.tokens);
  const ofOwner = { authorization: `Bearer ${tokens.give('Owner', 'author').token}` };
  const ofGuest = { authorization: `Bearer ${tokens.give('Guest', 'reader').token}` };
  const server = await testServer({ tokens });
  const address = await listen(server.app, { ...readConfiguration({}), port: 0 });
  try {
    const hour = (later: number) => `${String((new Date().getUTCHours() + later) % 24).padStart(2, '0')}:00`;
    const started = await server.ask({
      ...{ method: 'POST', url: `/api/v1/searches?hours=${hour(6)}-${hour(7)}&zone=UTC` },
      ...{ headers: ofOwner, payload: fixtureSearch('five-5pct-limits-on-grid-values').specification },
    });
    const events = `${address}/api/v1/searches/${started.json().id}/events`;
    const open = async (headers: Record<string, string>) => {
      const [stream] = (await once(get(events, { headers }), 'response')) as [IncomingMessage];
      expect(stream.headers['cache-control']).toBe('no-store');
      return stream.resume();
    };
    const [guest, owner] = [await open(ofGuest), await open(ofOwner)];
    guest.on('error', () => {});
    const ended = new Promise((resolve) => guest.on('close', resolve));
    tokens.withdraw('Guest');
    await ended;
    // Broken off, so that no export would look whole.
    expect(guest.complete).toBe(false);
    expect(owner.destroyed).toBe(false);
  } finally {
    await server.close();
    store.close();
  }
});
