import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { type Fault, fault, mostWorkers, ProblemError } from '@tiegel/contract/terms';
import { DEFAULT_MAX_POINTS } from '@tiegel/search';
import { z } from 'zod';
import { isLoopback } from './access/isLoopback.ts';

/** What the service is told from outside; README.md lists each setting with its default. */
export interface Configuration {
  host: string;
  port: number;
  /** anyone who reaches the address may use it */
  openNetwork: boolean;
  /** only holders of a token may use it */
  asksForTokens: boolean;
  /** files of the certificate and its key, in PEM; null: plain HTTP */
  tls: { certificate: string; key: string } | null;
  /** names that a request's Host may have beside those of this computer; null: any name */
  hostNames: readonly string[] | null;
  /** absolute path of the folder that holds the database */
  dataFolder: string;
  /** null: the scoring threads of this process do the work */
  redisUrl: string | null;
  /** scoring threads of this process */
  workers: number;
  /** a search of more grid points is refused */
  maxPoints: number;
}

const greatestCount = Number.MAX_SAFE_INTEGER;
const digits = /^\d+$/;
/** A large count may be written as 1e13. */
const digitsWithExponent = /^\d+(?:e\d+)?$/i;
/** Number() would also take 0x10 and blanks, which nobody means. */
const integer = (least: number, greatest: number, written = digits) =>
  z.string().regex(written).transform(Number).pipe(z.int().min(least).max(greatest));

/** Each setting: how its text is read, and what would be right, in words. */
const settings = {
  HOST: {
    read: z.string().regex(/^[\w.:-]+$/),
    needed: 'an address of this computer, for example 127.0.0.1',
  },
  PORT: { read: integer(0, 65_535), needed: 'a whole number from 0 (any free port) to 65535' },
  OPEN_NETWORK: { read: z.stringbool({ truthy: ['yes'], falsy: ['no'] }), needed: 'yes or no' },
  TOKENS: { read: z.stringbool({ truthy: ['yes'], falsy: ['no'] }), needed: 'yes or no' },
  TLS_CERTIFICATE: { read: z.string(), needed: 'the file of a certificate in PEM, with those above it' },
  TLS_KEY: { read: z.string(), needed: 'the file of the key of TLS_CERTIFICATE, in PEM' },
  HOST_NAMES: {
    read: z
      .string()
      .regex(/^(?:[\w.-]+|\[[\da-f:.]+\])(?: *, *(?:[\w.-]+|\[[\da-f:.]+\]))*$/i)
      .transform((text) => text.toLowerCase().split(/ *, */)),
    needed:
      'names without a port and with commas between, for example localhost or alloys.lab.example,10.0.0.5',
  },
  DATA_DIR: { read: z.string(), needed: 'a folder that this program may write to' },
  REDIS_URL: {
    read: z.url({ protocol: /^rediss?$/ }),
    needed: 'an address such as redis://:PASSWORD@HOST:6379',
  },
  WORKERS: { read: integer(0, mostWorkers), needed: `a whole number of threads from 0 to ${mostWorkers}` },
  MAX_POINTS: {
    read: integer(1, greatestCount, digitsWithExponent),
    needed: `a whole number from 1 to ${greatestCount}`,
  },
};
type Name = keyof typeof settings;

/**
 * Reads the settings from the environment; an empty text counts as left out.
 * Throws configuration/invalid and configuration/open-network, all of them at once.
 */
export function readConfiguration(environment: Readonly<Record<string, string | undefined>>): Configuration {
  const faults: Fault[] = [];
  const read = <N extends Name, D>(name: N, otherwise: D): z.output<(typeof settings)[N]['read']> | D => {
    const text = environment[name];
    if (text === undefined || text === '') return otherwise;
    const result = settings[name].read.safeParse(text);
    if (result.success) return result.data as z.output<(typeof settings)[N]['read']>;
    // An address of Redis holds its password.
    const value = name === 'REDIS_URL' ? '(not shown)' : text;
    faults.push(fault('configuration/invalid', { name, value, needed: settings[name].needed }, `/${name}`));
    return otherwise;
  };
  const redisUrl = read('REDIS_URL', null);
  const openNetwork = read('OPEN_NETWORK', false);
  const asksForTokens = read('TOKENS', false);
  const host = read('HOST', '127.0.0.1');
  const certificate = read('TLS_CERTIFICATE', null);
  const key = read('TLS_KEY', null);
  const configuration: Configuration = {
    host,
    port: read('PORT', 4270),
    openNetwork,
    asksForTokens,
    tls:
      certificate === null || key === null ? null : { certificate: resolve(certificate), key: resolve(key) },
    // A network has names for this computer that nobody knows here unless somebody says them.
    hostNames: read('HOST_NAMES', isLoopback(host) && !openNetwork ? [] : null),
    dataFolder: resolve(read('DATA_DIR', 'data')),
    redisUrl,
    // With Redis, worker processes do the work unless this one is told to help.
    workers: read('WORKERS', redisUrl === null ? availableParallelism() : 0),
    maxPoints: read('MAX_POINTS', DEFAULT_MAX_POINTS),
  };
  const { workers } = configuration;
  if (redisUrl === null && workers === 0) {
    const needed = 'at least 1, or set REDIS_URL to leave the work to worker processes';
    faults.push(fault('configuration/invalid', { name: 'WORKERS', value: '0', needed }, '/WORKERS'));
  }
  if (openNetwork && asksForTokens) {
    const needed = 'no where TOKENS=yes asks everybody for a token';
    faults.push(
      fault('configuration/invalid', { name: 'OPEN_NETWORK', value: 'yes', needed }, '/OPEN_NETWORK'),
    );
  }
  if ((certificate === null) !== (key === null)) {
    const name = key === null ? 'TLS_KEY' : 'TLS_CERTIFICATE';
    faults.push(fault('configuration/missing', { name, needed: settings[name].needed }, `/${name}`));
  }
  if (!isLoopback(host) && !openNetwork && !asksForTokens)
    faults.push(fault('configuration/open-network', { host }, '/HOST'));
  if (faults.length > 0) throw new ProblemError(faults);
  return configuration;
}
