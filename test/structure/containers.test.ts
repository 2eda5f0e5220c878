import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { parse } from 'yaml';
import { readConfiguration } from '../../services/api/src/configuration.ts';
import { freePort } from '../fixtures/freePort.ts';
import { redisIsHere, said } from '../fixtures/redisServer.ts';
import { until } from '../fixtures/until.ts';

/** No container engine runs in the tests: this reads what would be run, and holds it to its promises. */
const root = join(import.meta.dirname, '../..');
const text = readFileSync(join(root, 'docker-compose.yml'), 'utf8');

interface Service {
  image?: string;
  user?: string;
  build?: { context: string; dockerfile: string; target: string };
  command?: string[];
  environment?: Record<string, string>;
  ports?: string[];
  volumes?: string[];
  networks: string[];
  healthcheck: { test: unknown[] };
  restart: string;
  read_only: boolean;
  cap_drop: string[];
  security_opt: string[];
}
const compose = parse(text, { merge: true }) as {
  services: Record<string, Service>;
  networks: Record<string, { internal?: boolean } | null>;
  volumes: Record<string, unknown>;
};
const services = Object.entries(compose.services);

/** The build of a service, from its first line to its last: stages that it stands on, in order. */
function stagesOf({ dockerfile, target }: { dockerfile: string; target: string }): string[] {
  const stages = readFileSync(join(root, dockerfile), 'utf8').split(/^(?=FROM )/m);
  const found: string[] = [];
  for (let name: string | undefined = target; name; ) {
    const stage = stages.find((one) => one.split('\n')[0]!.endsWith(` AS ${name}`));
    if (!stage) break;
    found.unshift(stage);
    name = /^FROM (\S+)/.exec(stage)?.[1];
  }
  return found;
}

test('redis, api and worker are there', () => {
  expect(services.map(([name]) => name)).toEqual(['redis', 'api', 'worker']);
});

describe.each(services)('%s', (_, service) => {
  test('has a health check, comes back by itself, and is held down', () => {
    expect(service.healthcheck.test.length).toBeGreaterThan(1);
    for (const word of service.healthcheck.test) expect(word).toBeTypeOf('string');
    expect(service).toMatchObject({
      restart: 'unless-stopped',
      read_only: true,
      cap_drop: ['ALL'],
      security_opt: ['no-new-privileges:true'],
    });
  });

  test('does not run as root', () => {
    const user =
      service.user ??
      stagesOf(service.build!)
        .join('')
        .match(/^USER (\S+)$/m)?.[1];
    expect(user).toMatch(/^(redis|node)$/);
  });

  test('uses networks and volumes that are declared', () => {
    for (const name of service.networks) expect(compose.networks).toHaveProperty(name);
    for (const volume of service.volumes ?? []) expect(compose.volumes).toHaveProperty(volume.split(':')[0]!);
  });

  test('publishes nothing but on loopback', () => {
    for (const port of service.ports ?? []) expect(port).toMatch(/^127\.0\.0\.1:\d+:\d+$/);
  });

  test('is built from a stage that exists, on a slim Debian, and starts a file that exists', () => {
    if (!service.build) return expect(service.image).toMatch(/^redis:\d+\.\d+-bookworm$/);
    const stages = stagesOf(service.build);
    expect(stages[0]).toMatch(/^FROM node:\d+-bookworm-slim /);
    const [, program, file] = /^CMD \["(\w+)", "([\w./]+)"\]$/m.exec(stages.at(-1)!)!;
    expect(program).toBe('node');
    expect(existsSync(join(root, file!))).toBe(true);
  });
});

test('only the api is reached from outside the inner network, which leads nowhere', () => {
  expect(compose.networks.inside).toEqual({ internal: true });
  const outside = services.filter(([, { networks }]) => networks.includes('outside')).map(([name]) => name);
  expect(outside).toEqual(['api']);
});

test('the api answers to the names of this computer alone', () => {
  const environment = { ...compose.services.api!.environment, WORKERS: '1', REDIS_URL: '' };
  expect(readConfiguration(environment)).toMatchObject({ host: '0.0.0.0', hostNames: ['localhost'] });
});

test('Redis keeps what it has, forgets nothing when it is full, and asks for the password', () => {
  const command = compose.services.redis!.command!;
  const after = (word: string) => command[command.indexOf(word) + 1];
  expect(after('--appendonly')).toBe('yes');
  expect(after('--maxmemory-policy')).toBe('noeviction');
  expect(command.join(' ')).not.toContain('REDIS_PASSWORD');
  expect(compose.services.redis!.environment!.REDISCLI_AUTH).toMatch(/^\$\{REDIS_PASSWORD:\?.+\}$/);
});

test.skipIf(!redisIsHere())('the command of Redis asks for the password, and does not show it', async () => {
  const { command, environment } = compose.services.redis!;
  expect(Object.keys(environment!)).toEqual(['REDISCLI_AUTH']);
  const folder = mkdtempSync(join(tmpdir(), 'tiegel-compose-'));
  const port = await freePort();
  const [program, ...words] = command!.map((word) => word.replaceAll('$$', '$'));
  const running = spawn(
    program!,
    [...words, '--port', String(port), '--bind', '127.0.0.1', '--dir', folder],
    {
      ...{ env: { ...process.env, REDISCLI_AUTH: 'geheim24' }, stdio: 'ignore' },
    },
  );
  const ended = once(running, 'exit');
  onTestFinished(async () => {
    running.kill('SIGKILL');
    await ended;
    rmSync(folder, { recursive: true, force: true });
  });
  await until('Redis takes the password', async () => (await said(port, 'AUTH geheim24')).startsWith('+OK'));
  expect(await said(port, 'PING')).toMatch(/^-NOAUTH/);
  // The shell has become Redis: a signal of the container ends Redis itself.
  const shown = readFileSync(`/proc/${running.pid}/cmdline`, 'utf8');
  expect(shown).toContain('redis-server');
  expect(shown).not.toContain('geheim24');
});

test('there is no default secret: every mention of the password is the variable', () => {
  const mentions = text
    .split('\n')
    .filter((line) => /password|REDIS_URL|REDISCLI_AUTH/i.test(line) && !/^\s*#/.test(line));
  expect(mentions.length).toBeGreaterThan(3);
  for (const line of mentions) expect(line).toMatch(/\$\{REDIS_PASSWORD(:\?[^}]+)?\}|\$\$REDISCLI_AUTH/);
  expect(text).not.toMatch(/REDIS_PASSWORD:-/);
});
