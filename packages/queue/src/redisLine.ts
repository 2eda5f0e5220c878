import { Redis, type RedisOptions } from 'ioredis';
import { redisAddress } from './redisAddress.ts';

/** What an operator should know of the carrier, one line each; holds no secret. */
export type Log = (level: 'info' | 'warn' | 'error', text: string) => void;

/** For the producer: a command fails at once when Redis is out of reach, instead of waiting for its return. */
export const impatient = {
  enableOfflineQueue: false,
  maxRetriesPerRequest: 0,
  commandTimeout: 10_000,
} satisfies RedisOptions;

/** For workers and readers of events: commands wait until Redis is back. BullMQ demands the null. */
export const patient = { maxRetriesPerRequest: null } satisfies RedisOptions;

/** A connection that restores itself. */
export interface RedisLine {
  redis: Redis;
  /** host:port, to print */
  place: string;
  /** Settles when the first attempt to connect has succeeded or failed. */
  tried: Promise<void>;
  /** The last thing that was wrong, in words without a secret. */
  wrong(): string;
  /** For a BullMQ part on this line: says its errors, but not those that a broken line explains. */
  onError(error: Error): void;
}

const openRedis = (place: string) =>
  `WARNING: Redis at ${place} is on another computer, and REDIS_URL has no password. Whoever reaches it can feed workers tasks and ` +
  'the searches false results. Give Redis a password (requirepass), and REDIS_URL the same: redis://:PASSWORD@HOST:6379. See SECURITY.md.';

/** Opens a connection, warns of one that is open to others, and tells `log` when Redis goes and comes. Throws configuration/invalid. */
export function redisLine(url: string, temper: typeof impatient | typeof patient, log: Log): RedisLine {
  const { place, options, open } = redisAddress(url);
  if (open) log('warn', openRedis(place));
  const redis = new Redis({
    connectTimeout: 5000,
    retryStrategy: (times: number) => Math.min(100 * times, 1000),
    ...options,
    ...temper,
  });
  const { promise: tried, resolve } = Promise.withResolvers<void>();
  let wrong = 'not connected yet';
  let said = '';
  const say = (level: 'info' | 'warn', text: string) => {
    if (text !== said) log(level, text);
    said = text;
  };
  redis.on('ready', () => {
    say('info', `Redis at ${place} is reached.`);
    resolve();
  });
  // Only the message: the error object of a refused login carries the password among its fields.
  redis.on('error', ({ message }: Error) => {
    wrong = message;
    say('warn', `Redis at ${place} is out of reach (${message}); trying again every second.`);
    resolve();
  });
  redis.on('close', resolve);
  return {
    redis,
    place,
    tried,
    wrong: () => wrong,
    onError: ({ message }) => {
      if (redis.status === 'ready') say('warn', `Redis at ${place}: ${message}`);
    },
  };
}
