import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

// As services/worker does it: a quicker start, and 30 MB less.
enableCompileCache(join(import.meta.dirname, '../../../node_modules/.cache/node'));
await import('@tiegel/search/keepHeapSmall');
const { run } = await import('./run.ts');
await run();
