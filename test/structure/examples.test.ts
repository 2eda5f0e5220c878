import { execFileSync } from 'node:child_process';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const examples = globSync('packages/*/README.md', { cwd: root }).flatMap((file) =>
  [...readFileSync(join(root, file), 'utf8').matchAll(/```ts\n(.*?)```/gs)].map(([, code], index) => ({
    file,
    index,
    code: code!,
  })),
);

/** A line that is a value by itself; what it gives stands behind it, or in the line below. */
const shown = /^(?!import |const |\/\/)([^ }\n].*);(?:(?: |\n)\/\/ (.*))?$/gm;

/** Runs an example as a program of its own, and gives what each of its values is, as JSON would hold it. */
function valuesOf(code: string): unknown[] {
  const program = code.replace(shown, (_, value: string) => `shown.push(${value});`);
  const whole = `const shown: unknown[] = [];\n${program}\nconsole.log(JSON.stringify(shown));`;
  return JSON.parse(
    execFileSync(process.execPath, ['--input-type=module-typescript', '--eval', whole], {
      cwd: root,
      encoding: 'utf8',
    }),
  );
}

/** Every scalar of a value under its key; one without a key under ''. */
function scalarsOf(value: unknown, key = ''): [string, unknown][] {
  if (value === null || typeof value !== 'object') return [[key, value]];
  return Object.entries(value).flatMap(([name, one]) => scalarsOf(one, Array.isArray(value) ? key : name));
}

/** Whether a value is what a comment says: a number to the digits that stand there, cut off where … follows. */
function isAsSaid(value: unknown, said: string): boolean {
  if (typeof value !== 'number') return JSON.stringify(value)?.replaceAll('"', "'") === said;
  if (said.endsWith('…')) return String(value).startsWith(said.slice(0, -1));
  return value.toFixed(said.split('.')[1]?.length ?? 0) === said;
}

test('there are examples, and values in them', () => {
  expect(examples.map(({ file }) => file)).toEqual(
    expect.arrayContaining(
      ['charge', 'elements', 'insight', 'screening'].map((name) => `packages/${name}/README.md`),
    ),
  );
  expect(isAsSaid(7.997, '7.99…')).toBe(true);
  expect(isAsSaid(0.4356, '0.44')).toBe(true);
  expect(isAsSaid(0.4356, '0.48')).toBe(false);
});

test.each(examples)('example $index of $file gives what it says', ({ code }) => {
  const comments = [...code.matchAll(shown)].map(([, , comment]) => comment ?? '');
  const values = valuesOf(code);
  expect(values).toHaveLength(comments.length);
  const wrong = comments.flatMap((comment, index) => {
    const said = /^[{[]/.test(comment)
      ? [...comment.matchAll(/(\w+): (-?[\d.]+…?|'[^']*'|null|true|false)/g)].map((one) => [one[1]!, one[2]!])
      : [...comment.matchAll(/^-?[\d.]+…?|^'[^']*'/g)].map(([one]) => ['', one]);
    const scalars = scalarsOf(values[index]);
    return said
      .filter(([key, text]) => !scalars.some(([name, value]) => name === key && isAsSaid(value, text!)))
      .map(([key, text]) => `${key}: ${text} in ${comment}`);
  });
  expect(wrong).toEqual([]);
});
