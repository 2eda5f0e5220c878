import { basename } from 'node:path';
import { Readable } from 'node:stream';
import type { ReadableStream } from 'node:stream/web';
import { type Attachment, attachmentSchema } from '@tiegel/contract';
import { largestAttachment, problem } from '@tiegel/contract/terms';
import type { Command } from 'commander';
import { z } from 'zod';
import { readBytes } from '../input/readText.ts';
import { type ServerOptions as Options, serverCommandsOf } from '../input/serverOptions.ts';
import { asFile } from '../output/asFile.ts';
import { attachmentsText } from '../output/attachmentsText.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { answerOf, askServer } from '../server/askServer.ts';
import { serverAddress } from '../server/serverAddress.ts';

/** Commands below `melt` for pictures and measurements of a melt. The files lie in the folder of a running service, which keeps them. */
export function meltFileCommands(parent: Command): void {
  const command = serverCommandsOf(parent);
  const named = (name: string, description: string) =>
    command(name, description).argument('<id>', 'of the melt');

  named('attach', 'hand a running service a file of a melt: a picture, a PDF, the text of a measurement')
    .argument('<file>', '- for standard input')
    .option('--name <name>', 'to show; that of the file if left out')
    .action(async (id: string, file: string, options: Options & { name?: string }) => {
      const name = options.name ?? (file === '-' ? 'standard input' : basename(file));
      const path = `${pathOf(id)}?${new URLSearchParams({ name })}`;
      const content = readBytes(file);
      if (content.length === 0) throw problem('file/empty', { file });
      // Told here: a service that has read enough breaks off, which looks as if it were not there.
      if (content.length > largestAttachment)
        throw problem('request/too-large', { limit: largestAttachment });
      const asked = { method: 'POST', path, file: content } as const;
      await tell(await askServer(serverAddress(options.server), asked, attachmentSchema), options);
    });
  named('attached', 'write a file that is attached to a melt as it was given')
    .argument('<attachment>')
    .requiredOption('--into <file>', 'where to; - for standard output')
    .option('--overwrite', 'also where the file is there already')
    .action((id: string, one: string, options: Options & { into: string; overwrite?: true }) =>
      save(id, one, options),
    );
  for (const [verb, description, method, act] of [
    ['detach', 'take a file from a melt; it can be brought back', 'DELETE', ''],
    ['reattach', 'bring back a file that was taken from a melt', 'POST', '/restore'],
  ] as const)
    named(verb, description)
      .argument('<attachment>')
      .action(async (id: string, one: string, options: Options) => {
        const path = `${pathOf(id)}/${encodeURIComponent(one)}${act}`;
        const left = await askServer(
          serverAddress(options.server),
          { method, path },
          z.array(attachmentSchema),
        );
        await tell(left, options);
      });
}

const pathOf = (id: string): string => `/melts/${encodeURIComponent(id)}/attachments`;

async function tell(found: Attachment | Attachment[], { json }: Options): Promise<void> {
  await standardOutput(json ? jsonText(found) : inWords(Array.isArray(found) ? found : [found]));
}

function* inWords(all: readonly Attachment[]): Generator<string> {
  if (all.length === 0) yield 'No file is attached.\n';
  yield* attachmentsText(all);
}

async function save(
  id: string,
  one: string,
  { server, into, overwrite, json }: Options & { into: string; overwrite?: true },
): Promise<void> {
  const path = `${pathOf(id)}/${encodeURIComponent(one)}`;
  const open = async () => {
    const { body } = await answerOf(serverAddress(server), { method: 'GET', path });
    return Readable.fromWeb(body as ReadableStream);
  };
  await standardOutput(await asFile({ format: 'as it was given', into, overwrite, json }, open));
}
