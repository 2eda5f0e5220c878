import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { ProblemError } from '@tiegel/contract/terms';
import { expect, test } from 'vitest';
import { readConfiguration } from '../src/configuration.ts';

function faultsIn(environment: Record<string, string>): { code: string; pointer: string; text: string }[] {
  try {
    readConfiguration(environment);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return error.faults.map(({ code, pointer, detail, remedy }) => ({
      code,
      pointer,
      text: `${detail} ${remedy}`,
    }));
  }
  return [];
}

test('nothing set serves this computer alone, on the documented defaults', () => {
  expect(readConfiguration({})).toEqual({
    host: '127.0.0.1',
    port: 4270,
    openNetwork: false,
    asksForTokens: false,
    tls: null,
    hostNames: [],
    dataFolder: resolve('data'),
    redisUrl: null,
    workers: availableParallelism(),
    maxPoints: 10_000_000_000_000,
  });
});

test('an empty setting counts as left out', () => {
  const empty = {
    HOST: '',
    PORT: '',
    OPEN_NETWORK: '',
    TOKENS: '',
    TLS_CERTIFICATE: '',
    TLS_KEY: '',
    HOST_NAMES: '',
    DATA_DIR: '',
    REDIS_URL: '',
    WORKERS: '',
    MAX_POINTS: '',
  };
  expect(readConfiguration(empty)).toEqual(readConfiguration({}));
});

test('every setting is read', () => {
  const set = {
    HOST: '0.0.0.0',
    PORT: '8080',
    TOKENS: 'yes',
    TLS_CERTIFICATE: '/etc/alloys/certificate.pem',
    TLS_KEY: '/etc/alloys/key.pem',
    HOST_NAMES: 'Alloys.lab.example, 10.0.0.5,[fd00::5]',
    DATA_DIR: '/var/lib/alloys',
    REDIS_URL: 'redis://:secret@redis:6379',
    WORKERS: '3',
    MAX_POINTS: '1e9',
  };
  expect(readConfiguration(set)).toEqual({
    host: '0.0.0.0',
    port: 8080,
    openNetwork: false,
    asksForTokens: true,
    tls: { certificate: resolve('/etc/alloys/certificate.pem'), key: resolve('/etc/alloys/key.pem') },
    hostNames: ['alloys.lab.example', '10.0.0.5', '[fd00::5]'],
    dataFolder: resolve('/var/lib/alloys'),
    redisUrl: 'redis://:secret@redis:6379',
    workers: 3,
    maxPoints: 1_000_000_000,
  });
});

test('any name will do on a network alone, and there only where none is given', () => {
  expect(readConfiguration({ TOKENS: 'yes', HOST: '0.0.0.0' }).hostNames).toBeNull();
  // Whoever asks for tokens on this computer alone still knows its names.
  expect(readConfiguration({ TOKENS: 'yes' }).hostNames).toEqual([]);
  expect(readConfiguration({ OPEN_NETWORK: 'yes' }).hostNames).toBeNull();
  expect(readConfiguration({ OPEN_NETWORK: 'yes', HOST_NAMES: 'localhost' }).hostNames).toEqual([
    'localhost',
  ]);
  expect(readConfiguration({ HOST_NAMES: 'behind.proxy.example' }).hostNames).toEqual([
    'behind.proxy.example',
  ]);
});

test('with Redis, this process does not score unless it is told to', () => {
  expect(readConfiguration({ REDIS_URL: 'redis://localhost:6379' }).workers).toBe(0);
  expect(readConfiguration({ REDIS_URL: 'redis://localhost:6379', WORKERS: '2' }).workers).toBe(2);
});

test.each(['localhost', '127.0.0.1', '127.8.8.8', '::1'])('%s is this computer alone', (HOST) => {
  expect(readConfiguration({ HOST }).host).toBe(HOST);
});

test.each(['0.0.0.0', '::', '192.168.1.20', 'lab.example', '128.0.0.1'])(
  '%s is refused unless tokens are asked for or the network is opened expressly',
  (HOST) => {
    expect(faultsIn({ HOST })).toMatchObject([{ code: 'configuration/open-network', pointer: '/HOST' }]);
    expect(readConfiguration({ HOST, OPEN_NETWORK: 'yes' })).toMatchObject({ host: HOST, openNetwork: true });
    expect(readConfiguration({ HOST, TOKENS: 'yes' })).toMatchObject({ host: HOST, openNetwork: false });
  },
);

test.each([
  ['PORT', '65536', '0 (any free port) to 65535'],
  ['PORT', '80.5', 'a whole number'],
  ['PORT', 'http', 'a whole number'],
  ['PORT', '0x10', 'a whole number'],
  ['PORT', ' 48716', 'a whole number'],
  ['WORKERS', '1e1', 'a whole number'],
  ['OPEN_NETWORK', 'true', 'yes or no'],
  ['WORKERS', '-1', 'from 0 to 1024'],
  ['WORKERS', '0', 'at least 1, or set REDIS_URL'],
  ['MAX_POINTS', '0x10', 'from 1 to 9007199254740991'],
  ['MAX_POINTS', '0', 'from 1 to 9007199254740991'],
  ['MAX_POINTS', '1e16', 'from 1 to 9007199254740991'],
  ['HOST', 'two words', 'an address of this computer'],
  ['HOST_NAMES', 'lab.example:4270', 'names without a port'],
  ['HOST_NAMES', '*', 'names without a port'],
  ['HOST_NAMES', 'http://lab.example', 'names without a port'],
  ['HOST_NAMES', 'one,,two', 'names without a port'],
  ['REDIS_URL', 'http://localhost', 'redis://'],
])('%s=%s is refused with what would be right', (name, value, needed) => {
  const [first] = faultsIn({ [name]: value });
  expect(first).toMatchObject({ code: 'configuration/invalid', pointer: `/${name}` });
  expect(first!.text).toContain(needed);
});

test('all that is wrong is said at once', () => {
  const faults = faultsIn({ PORT: 'x', WORKERS: 'many', MAX_POINTS: 'all', HOST: '10.0.0.1' });
  expect(faults.map(({ pointer }) => pointer)).toEqual(['/PORT', '/WORKERS', '/MAX_POINTS', '/HOST']);
});

test('a wrong address of Redis is named without its password', () => {
  const [fault] = faultsIn({ REDIS_URL: 'redi://:secret@redis:6379' });
  expect(fault!.text).toContain('REDIS_URL');
  expect(fault!.text).not.toContain('secret');
});

test('open to anyone and to holders of a token alone cannot both be', () => {
  expect(faultsIn({ OPEN_NETWORK: 'yes', TOKENS: 'yes' })).toMatchObject([
    { code: 'configuration/invalid', pointer: '/OPEN_NETWORK', text: expect.stringContaining('TOKENS=yes') },
  ]);
});

test('a certificate without its key is refused, and a key without its certificate', () => {
  expect(faultsIn({ TLS_CERTIFICATE: 'c.pem' })).toMatchObject([
    { code: 'configuration/missing', pointer: '/TLS_KEY' },
  ]);
  expect(faultsIn({ TLS_KEY: 'k.pem' })).toMatchObject([
    { code: 'configuration/missing', pointer: '/TLS_CERTIFICATE' },
  ]);
});
