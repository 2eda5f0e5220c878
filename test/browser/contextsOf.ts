import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterEach } from 'vitest';

interface Held {
  context: BrowserContext;
  /** Keeps the process of the context, which has read the program of the pages already. */
  first: Page;
  origin: string;
  /** Where it goes once a test is through with it. */
  free: Held[];
}

const inUse = new Set<Held>();

// Pages that nobody looks at any more would go on drawing and asking beside the next test; scripts close theirs.
if (process.env.VITEST) {
  afterEach(async () => {
    const left = [...inUse];
    inUse.clear();
    await Promise.all(left.map(emptied));
  });
}

/**
 * Gives out browser contexts with these options, each as empty as a new one. A test never gets the same one twice;
 * the next test gets those of the last one, without what it left in them: a page in a new process takes twice as
 * long to open.
 */
export function contextsOf(
  browser: Browser,
  origin: string,
): (options: BrowserContextOptions) => Promise<BrowserContext> {
  const free = new Map<string, Held[]>();
  return async (options) => {
    const key = JSON.stringify(options);
    const alike = free.get(key) ?? [];
    free.set(key, alike);
    const held = alike.pop() ?? (await made(browser, origin, options, alike));
    inUse.add(held);
    return held.context;
  };
}

async function made(
  browser: Browser,
  origin: string,
  options: BrowserContextOptions,
  free: Held[],
): Promise<Held> {
  const context = await browser.newContext({ locale: 'en-US', timezoneId: 'UTC', ...options });
  const first = await context.newPage();
  await first.goto(`${origin}/crucible.svg`);
  return { context, first, origin, free };
}

async function emptied(held: Held): Promise<void> {
  const { context, first, origin, free } = held;
  // A test may have closed it, or the whole browser.
  if (first.isClosed()) return;
  await Promise.all(context.pages().map((page) => page === first || page.close()));
  await context.setOffline(false);
  await context.clearPermissions();
  await context.clearCookies();
  const session = await context.newCDPSession(first);
  await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await session.detach();
  context.removeAllListeners();
  free.push(held);
}
