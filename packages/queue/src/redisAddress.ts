import { isIPv4 } from 'node:net';
import { problem } from '@tiegel/contract/terms';

/** Where a Redis is and how to log in, in the terms of ioredis. */
export interface RedisAddress {
  host: string;
  port: number;
  db: number;
  username?: string;
  password?: string;
  tls?: object;
}

/**
 * Reads a REDIS_URL, redis://[[user]:password@]host[:port][/database] or rediss:// for TLS.
 * `place` (host:port) is what may be printed: the URL holds the password. `open`: it is on another computer and
 * asks for no password. Throws configuration/invalid.
 */
export function redisAddress(url: string): { place: string; options: RedisAddress; open: boolean } {
  const parsed = URL.parse(url);
  const database = /^\/?(\d{0,5})$/.exec(parsed?.pathname ?? '');
  if (!parsed || !['redis:', 'rediss:'].includes(parsed.protocol) || !parsed.hostname || !database) {
    throw unreadable();
  }
  const host = parsed.hostname.replace(/^\[(.*)\]$/, '$1');
  const port = Number(parsed.port || 6379);
  const options: RedisAddress = { host, port, db: Number(database[1]) };
  if (parsed.username) options.username = decoded(parsed.username);
  if (parsed.password) options.password = decoded(parsed.password);
  if (parsed.protocol === 'rediss:') options.tls = {};
  const open = options.password === undefined && !isHere(host);
  return { place: `${parsed.hostname}:${port}`, options, open };
}

const isHere = (host: string): boolean =>
  host === 'localhost' || host === '::1' || (isIPv4(host) && host.startsWith('127.'));

/** A password with an unescaped % is no reason to print it in an error. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    throw unreadable();
  }
}

const unreadable = () =>
  problem(
    'configuration/invalid',
    { name: 'REDIS_URL', value: '(not shown)', needed: 'an address such as redis://:PASSWORD@HOST:6379' },
    '/REDIS_URL',
  );
