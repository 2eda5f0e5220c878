import { existsSync } from 'node:fs';
import type { SearchView } from '@tiegel/contract';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Locator,
  type Page,
} from 'playwright-core';
import { expect } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { until } from '../fixtures/until.ts';
import { builtPages } from './builtPages.ts';
import { contextsOf } from './contextsOf.ts';

/** Debian's, without the parts that draw a window where it is there: pages open in half the time. Another by CHROMIUM. */
const installed = ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium'];
const executablePath = process.env.CHROMIUM ?? installed.find((path) => existsSync(path)) ?? installed[1]!;
// One process for all pages of a context; most are gone before code that is compiled twice has paid for itself.
const args = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--process-per-site',
  '--js-flags=--no-opt --no-maglev',
];

/** A page under watch. */
interface Visit {
  page: Page;
  /** everything that should not have happened: requests to other hosts, errors on the console, broken rules */
  wrongs: string[];
}

/** The real api with the built pages on a database of its own, and a browser to look at them. */
export interface Site {
  url: string;
  browser: Browser;
  /** Opens an address of the site in a browser context of its own. */
  visit(path: string, options?: BrowserContextOptions): Promise<Visit>;
  /** JSON of the API; a second value is posted. */
  api<T>(path: string, body?: unknown): Promise<T>;
  /** Starts a search and waits until it has ended. */
  finish(specification: unknown): Promise<SearchView>;
  /** Ends the server as a power cut would. */
  kill(): Promise<void>;
  /** Starts it again, on the same database and address. */
  revive(): Promise<void>;
  close(): Promise<void>;
}

/** Starts the api and a browser. `fill` puts something into the empty data folder before. */
export async function openSite(
  fill: (dataFolder: string) => void = () => {},
  { tokens = false } = {},
): Promise<Site> {
  await builtPages();
  const folder = await temporaryFolder('browser');
  fill(folder.path);
  const settings = { dataFolder: folder.path, port: await freePort(), workers: 2, tokens };
  let server = await startApi(settings);
  const browser = await chromium.launch({ executablePath, args });
  const contextWith = contextsOf(browser, server.url);

  const api = async <T>(path: string, body?: unknown): Promise<T> => {
    const sent =
      body === undefined
        ? {}
        : { method: 'POST', body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
    const answer = await fetch(`${server.url}/api/v1${path}`, sent);
    if (!answer.ok) throw new Error(`${path} answered ${answer.status}: ${await answer.text()}`);
    return (await answer.json()) as T;
  };
  return {
    url: server.url,
    browser,
    api,
    visit: async (path, options = {}) => visit(await contextWith(options), server.url, path),
    async finish(specification) {
      const { id } = await api<{ id: string }>('/searches', specification);
      return until('the search has ended', async () => {
        const view = await api<SearchView>(`/searches/${id}`);
        return ['done', 'failed', 'cancelled'].includes(view.state) && view;
      });
    },
    kill: () => server.kill(),
    async revive() {
      server = await startApi(settings);
    },
    async close() {
      await browser.close();
      await server.stop();
      await folder.remove();
    },
  };
}

/** What a page shows in the end; a busy machine may take its time. */
export const eventually = <T>(ask: () => T | Promise<T>) => expect.poll(ask, { timeout: 30_000 });

/** The text of the one element that is meant. */
export async function textOf(place: Locator): Promise<string> {
  return ((await place.textContent()) ?? '').replaceAll('\u00a0', ' ');
}

async function visit(context: BrowserContext, url: string, path: string): Promise<Visit> {
  const wrongs: string[] = [];
  // Only heard: whoever holds requests up takes the browser's cache away, and a page longer to open.
  context.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== url && protocol !== 'blob:' && protocol !== 'data:') wrongs.push(`asked ${request.url()}`);
  });
  const page = await context.newPage();
  page.on('pageerror', (error) => wrongs.push(`threw ${error.message}`));
  page.on('console', (message) => {
    // What a test provokes (a refused request, a server that is gone) is logged by the browser itself.
    const provoked = message.text().startsWith('Failed to load resource');
    if (message.type() === 'error' && !provoked) wrongs.push(`logged ${message.text()}`);
  });
  await page.goto(url + path);
  return { page, wrongs };
}
