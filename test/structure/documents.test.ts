import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const documents = globSync('{*.md,packages/*/*.md,services/*/*.md,test/**/*.md}', { cwd: root }).filter(
  (file) => !file.includes('node_modules'),
);

test('every package and service says what it is', () => {
  const homes = globSync('{packages,services}/*/package.json', { cwd: root }).map(dirname);
  expect(homes.length).toBeGreaterThan(8);
  expect(homes.filter((home) => !existsSync(join(root, home, 'README.md')))).toEqual([]);
});

test('every link between documents leads somewhere', () => {
  const broken = documents.flatMap((file) => {
    const links = [...readFileSync(join(root, file), 'utf8').matchAll(/\]\(([^)\s]+)\)/g)];
    return links
      .map(([, target]) => target!)
      .filter((target) => !/^(https?:|mailto:|#)/.test(target))
      .filter((target) => !existsSync(join(root, dirname(file), target.split('#')[0]!)))
      .map((target) => `${file}: ${target}`);
  });
  expect(documents.length).toBeGreaterThan(5);
  expect(broken).toEqual([]);
});

test('every file that a document names in a command is there', () => {
  const missing = documents.flatMap((file) => {
    const named = [
      ...readFileSync(join(root, file), 'utf8').matchAll(
        /(?:packages|services|scripts|test)\/[\w./-]+\.(?:ts|mjs|json|csv)\b/g,
      ),
    ];
    return named
      .map(([path]) => path)
      .filter((path) => !existsSync(join(root, path)) && !existsSync(join(root, dirname(file), path)))
      .map((path) => `${file}: ${path}`);
  });
  expect(missing).toEqual([]);
});

test('every part of a package that its document names is there', () => {
  const named = documents.flatMap((file) =>
    [...readFileSync(join(root, file), 'utf8').matchAll(/`((?:src|bench|public)\/[\w./-]*)`/g)].map(
      ([, path]) => ({ file, path: path! }),
    ),
  );
  expect(named.length).toBeGreaterThan(50);
  expect(named.filter(({ file, path }) => !existsSync(join(root, dirname(file), path)))).toEqual([]);
});

test('no command of a document hands TypeScript to the node of the shell, which may be too old for it', () => {
  const scripts = globSync('scripts/*.ts', { cwd: root });
  const unread = [...documents, ...scripts].flatMap((file) => {
    const found =
      readFileSync(join(root, file), 'utf8').match(/(?<!npx |\.bin\/)\bnode [\w./-]+\.ts\b.*/g) ?? [];
    return found.map((command) => `${file}: ${command}`);
  });
  expect(scripts.length).toBeGreaterThan(5);
  expect(unread).toEqual([]);
});

test('every npm script that a document names is there', () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const missing = documents.flatMap((file) => {
    const named = readFileSync(join(root, file), 'utf8').matchAll(/\bnpm run (?:-s )?([\w:]+)/g);
    return [...named].filter(([, name]) => !Object.hasOwn(scripts, name!)).map(([all]) => `${file}: ${all}`);
  });
  expect(missing).toEqual([]);
});
