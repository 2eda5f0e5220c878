/**
 * Checks the walls between packages: who may import whom (the table below), that nobody reaches
 * into another package's files, that each package imports exactly what its package.json declares,
 * that what runs in a browser imports no Node built-in, and that no files import each other in a
 * circle. Usage: npx node scripts/boundaries.ts [FOLDER]
 */
import { existsSync, globSync, readFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { dirname, join, relative, resolve, sep } from 'node:path';

/** The service and the terminal are put together of the same parts. */
const programs = [
  'contract',
  'contract/terms',
  'elements',
  'elements/publishedAlloys',
  'screening',
  'engine',
  'insight',
  'charge',
  'search',
  'search/laboratory',
  'search/exportFile',
  'search/keepHeapSmall',
  'search/shortlistFile',
  'search/systemsFile',
  'store',
  'queue',
  'queue/redis',
];

const mayImport: Record<string, readonly string[]> = {
  'packages/contract': [],
  'packages/elements': ['contract', 'contract/terms'],
  'packages/screening': ['contract', 'contract/terms', 'elements'],
  'packages/engine': ['contract', 'contract/terms', 'elements', 'screening'],
  'packages/insight': ['contract', 'contract/terms', 'elements', 'elements/publishedAlloys', 'screening'],
  'packages/charge': ['contract', 'contract/terms', 'elements'],
  'packages/store': ['contract', 'contract/terms'],
  'packages/queue': ['contract', 'contract/terms'],
  'packages/search': [
    'contract',
    'contract/terms',
    'elements',
    'elements/publishedAlloys',
    'screening',
    'engine',
    'insight',
    'insight/late',
    'charge',
    'store',
    'queue',
    'queue/handOver',
    'queue/redis',
  ],
  'services/worker': ['contract', 'contract/terms', 'queue/redis', 'engine', 'search/scoringThread'],
  'services/api': programs,
  'services/cli': programs,
  'services/web': [
    'contract',
    'contract/terms',
    'elements',
    'elements/publishedAlloys',
    'screening',
    'charge',
  ],
};
const runsInBrowser = new Set([
  'packages/contract',
  'packages/elements',
  'packages/screening',
  'packages/engine',
  'packages/insight',
  'packages/charge',
  'services/web',
]);
/** What may be imported beside a package's index: a thread's file and what it needs of a queue, what a program begins with, what is too large for whoever does not want it, and words without schemas. */
const ownEntries = new Set([
  'insight/late',
  'search/laboratory',
  'contract/terms',
  'search/exportFile',
  'search/scoringThread',
  'search/keepHeapSmall',
  'search/shortlistFile',
  'search/systemsFile',
  'queue/handOver',
  'queue/redis',
  'elements/publishedAlloys',
]);
const declaredForOthers = new Set(['vite', '@vitejs/plugin-react']);

interface Import {
  file: string;
  line: number;
  target: string;
}

/** Every static, dynamic and re-exporting import of a file, and what it resolves to hand to a thread. */
function importsOf(root: string, file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  const found: Import[] = [];
  const pattern =
    /(?:^|[\n;])\s*(?:import|export)\b[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]|(?:^|[\n;])\s*import\s*['"]([^'"]+)['"]|\bimport(?:\.meta\.resolve)?\(\s*['"]([^'"]+)['"]/g;
  for (const match of text.matchAll(pattern)) {
    const line = text.slice(0, match.index + match[0].length).split('\n').length;
    found.push({ file, line, target: (match[1] ?? match[2] ?? match[3])! });
  }
  return found;
}

/** Faults of one import, in words; none where it is allowed. */
function faultsOf(root: string, home: string, one: Import, dependencies: ReadonlySet<string>): string[] {
  const { target, file } = one;
  if (target.startsWith('.')) {
    const path = relative(root, resolve(root, dirname(file), target))
      .split(sep)
      .join('/');
    // A program says of which version of the project it is.
    const version = path === 'package.json' && home.startsWith('services/');
    return version || path.startsWith(`${home}/`) ? [] : [`reaches out of ${home} to ${path}`];
  }
  if (isBuiltin(target)) {
    return runsInBrowser.has(home)
      ? [`imports the Node built-in ${target}, but ${home} runs in a browser`]
      : [];
  }
  const name = target.startsWith('@') ? target.split('/').slice(0, 2).join('/') : target.split('/')[0]!;
  const undeclared = dependencies.has(name) ? [] : [`imports ${name}, which package.json does not declare`];
  if (!target.startsWith('@tiegel/')) return undeclared;
  const wanted = target.slice('@tiegel/'.length);
  if (wanted.includes('/') && !ownEntries.has(wanted)) {
    return [...undeclared, `reaches into ${target}; only a package's index is importable`];
  }
  const allowed = mayImport[home] ?? [];
  const fits = allowed.includes(wanted) || (wanted === 'search/scoringThread' && allowed.includes('search'));
  return fits ? undeclared : [...undeclared, `may not import ${target}`];
}

/** The first circle of files that import each other, or null. */
function circleIn(graph: ReadonlyMap<string, readonly string[]>): string[] | null {
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (file: string): string[] | null => {
    const at = trail.indexOf(file);
    if (at >= 0) return [...trail.slice(at), file];
    if (done.has(file)) return null;
    trail.push(file);
    for (const next of graph.get(file) ?? []) {
      const circle = visit(next);
      if (circle) return circle;
    }
    trail.pop();
    done.add(file);
    return null;
  };
  for (const file of graph.keys()) {
    const circle = visit(file);
    if (circle) return circle;
  }
  return null;
}

function check(root: string): { modules: number; faults: string[] } {
  const faults: string[] = [];
  const graph = new Map<string, string[]>();
  for (const home of Object.keys(mayImport)) {
    const description = join(root, home, 'package.json');
    if (!existsSync(description)) continue;
    const declared = JSON.parse(readFileSync(description, 'utf8')).dependencies ?? {};
    const dependencies = new Set(Object.keys(declared));
    const used = new Set<string>();
    for (const file of globSync(`${home}/src/**/*.{ts,tsx}`, { cwd: root })) {
      const imports = importsOf(root, file);
      graph.set(
        file,
        imports
          .filter(({ target }) => /^\..*\.tsx?$/.test(target))
          .map(({ target }) => relative(root, resolve(root, dirname(file), target))),
      );
      for (const one of imports) {
        for (const name of dependencies) {
          if (one.target === name || one.target.startsWith(`${name}/`)) used.add(name);
        }
        for (const what of faultsOf(root, home, one, dependencies))
          faults.push(`${file}:${one.line}: ${what}`);
      }
    }
    for (const name of dependencies) {
      if (!used.has(name) && !declaredForOthers.has(name)) {
        faults.push(`${home}/package.json: declares ${name}, which nothing imports`);
      }
    }
  }
  const circle = circleIn(graph);
  if (circle) faults.push(`files import each other in a circle: ${circle.join(' -> ')}`);
  return { modules: graph.size, faults };
}

const root = resolve(process.argv[2] ?? join(import.meta.dirname, '..'));
const { modules, faults } = check(root);
for (const one of faults) console.error(one);
if (modules === 0) console.error(`no modules found under ${root}: nothing was checked`);
console.error(`boundaries: ${modules} modules, ${faults.length} faults`);
process.exit(faults.length > 0 || modules === 0 ? 1 : 0);
