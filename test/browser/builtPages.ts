import { mkdirSync, rmdirSync } from 'node:fs';
import { join } from 'node:path';
import { buildPages } from '../../scripts/buildPages.ts';
import { until } from '../fixtures/until.ts';

const lock = join(import.meta.dirname, '../../node_modules/.pages-lock');

/** Builds the pages where they are out of date. Test files run side by side: one builds, the others wait for it. */
export async function builtPages(): Promise<void> {
  await until('no other test file builds the pages', takeLock);
  try {
    buildPages();
  } finally {
    rmdirSync(lock);
  }
}

function takeLock(): boolean {
  try {
    mkdirSync(lock);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}
