// Plain JavaScript for any Node: setup.mjs asks as well, and main.mjs before it knows which Node it is.
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** Where scripts/buildTerminal.ts puts what it makes, beside `built.json`, which tells of what it was made. */
export const builtInto = join(root, 'services/cli/dist');

/**
 * The folder in which the program lies as a few files, made of these very sources; null where it was not
 * made, or anything that it was made of has changed since.
 */
export function builtFolder(into = builtInto) {
  try {
    const { folder, madeOf } = JSON.parse(readFileSync(join(into, 'built.json'), 'utf8'));
    for (const [file, size, changed] of madeOf) {
      const now = statSync(join(root, file));
      if (now.size !== size || now.mtimeMs !== changed) return null;
    }
    return join(into, folder);
  } catch {
    return null;
  }
}
