import { once } from 'node:events';
import { type AddressInfo, createServer } from 'node:net';
import { expect, test } from 'vitest';
import { readConfiguration } from '../src/configuration.ts';
import { listen } from '../src/listen.ts';
import { testServer } from './fixtures/testServer.ts';

test('a port in use and an address of another computer are problems of the table', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  const { port } = other.address() as AddressInfo;
  const first = await testServer();
  await expect(listen(first.app, { ...readConfiguration({}), port })).rejects.toMatchObject({
    faults: [{ code: 'server/address-in-use', pointer: '/PORT' }],
  });
  other.close();
  await first.close();

  const second = await testServer();
  // 192.0.2.0/24 is kept for documents (RFC 5737): no computer has it.
  await expect(
    listen(second.app, { ...readConfiguration({}), host: '192.0.2.1', port: 0 }),
  ).rejects.toMatchObject({
    faults: [{ code: 'server/cannot-listen', pointer: '/HOST' }],
  });
  await second.close();
});
