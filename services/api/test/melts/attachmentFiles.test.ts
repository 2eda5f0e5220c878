import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ProblemError } from '@tiegel/contract';
import { expect, onTestFinished, test } from 'vitest';
import { smallDisk } from '../../../../test/fixtures/smallDisk.ts';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { until } from '../../../../test/fixtures/until.ts';
import { attachmentFiles } from '../../src/melts/attachmentFiles.ts';

const content = Buffer.alloc(100_000, 'a measurement ');

test('a content that cannot be written leaves nothing', async () => {
  const folder = await temporaryFolder('attachments');
  onTestFinished(() => folder.remove());
  const files = attachmentFiles(folder.path);
  await files.write('a1', content);
  expect(await readFile(join(folder.path, 'a1'))).toEqual(content);
  // What cannot be replaced by a file.
  mkdirSync(join(folder.path, 'b2', 'c3'), { recursive: true });
  await expect(files.write('b2', content)).rejects.toThrow(/EISDIR|ENOTEMPTY/);
  expect(readdirSync(folder.path).sort()).toEqual(['a1', 'b2']);
});

test('what a process that died left half-written goes at the next start; what is whole stays', async () => {
  const folder = await temporaryFolder('attachments');
  onTestFinished(() => folder.remove());
  await attachmentFiles(folder.path).write('a1', content);
  const writing = spawn(
    process.execPath,
    [
      '--input-type=module-typescript',
      '--eval',
      `import { attachmentFiles } from ${JSON.stringify(new URL('../../src/melts/attachmentFiles.ts', import.meta.url).href)};
       await attachmentFiles(${JSON.stringify(folder.path)}).write('b2', Buffer.alloc(400_000_000));`,
    ],
    { stdio: 'ignore' },
  );
  const ended = once(writing, 'exit');
  await until('it is writing', () => readdirSync(folder.path).includes('b2.half'));
  writing.kill('SIGKILL');
  await ended;
  expect(readdirSync(folder.path).sort()).toEqual(['a1', 'b2.half']);
  await attachmentFiles(folder.path).write('c3', content);
  expect(readdirSync(folder.path).sort()).toEqual(['a1', 'c3']);
});

test('a full disk is told as such, and keeps nothing of the content', async (context) => {
  const disk = await smallDisk(1);
  if (disk === null) return context.skip();
  onTestFinished(() => disk.close());
  const folder = join(disk.path, 'attachments');
  const files = attachmentFiles(folder);
  await files.write('a1', Buffer.from('1 2'));
  await disk.fill();
  const refused = await files.write('b2', content).catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(ProblemError);
  expect((refused as ProblemError).faults).toMatchObject([
    { code: 'store/full', detail: expect.stringContaining(join(folder, 'b2')) },
  ]);
  expect(readdirSync(folder)).toEqual(['a1']);
  await disk.free();
  await files.write('b2', content);
  expect(await readFile(join(folder, 'b2'))).toEqual(content);
});
