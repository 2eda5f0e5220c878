import { setTimeout } from 'node:timers/promises';
import { isOver, type Priority, priorities, type SearchView, searchViewSchema } from '@tiegel/contract';
import { Argument, type Command, InvalidArgumentError, Option } from 'commander';
import { z } from 'zod';
import { readSpecification } from '../input/readSpecification.ts';
import { type ServerOptions as Options, serverCommandsOf } from '../input/serverOptions.ts';
import { jsonText } from '../output/jsonText.ts';
import { progressBar } from '../output/progressBar.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { scheduledText, standingText, standingTexts } from '../output/standingText.ts';
import { notDone } from '../searching/notDone.ts';
import { type Asked, askServer } from '../server/askServer.ts';
import { serverAddress } from '../server/serverAddress.ts';

interface Hours {
  from: string;
  to: string;
}

/** Between two looks at a search that is watched. */
const lookEveryMs = 1000;

const verbs = [
  ['pause', 'stops handing out its work until it is resumed', null],
  [
    'resume',
    'takes up a paused or failed search where it stopped',
    'one of this database instead, worked on in this process as by "search --database"',
  ],
  ['cancel', 'ends it for good; what it found so far is not kept', 'one of this database instead'],
] as const;

/** `searches`: those of a running service, over HTTP: started, looked at, paused, resumed, cancelled, worked on at other hours; also those of a database, gone on with or cancelled. */
export function searchesCommand(program: Command): void {
  const parent = program
    .command('searches')
    .description(
      'the searches of a running service: start, list, watch, pause, resume, cancel, hours, priority',
    );
  const named = serverCommandsOf(parent);
  const ofOne = (name: string, description: string) =>
    named(name, description).argument('<id>', 'of the search');

  named('list', 'every search, the newest first, and how far it is').action(async (options: Options) => {
    const all = await ask(options, { method: 'GET', path: '/searches' }, z.array(searchViewSchema));
    await standardOutput(options.json ? jsonText(all) : standingTexts(all));
  });
  whenOptions(
    named('start', 'starts a search there').argument('<specification>', 'a JSON file; - for standard input'),
  ).action(async (file: string, options: Options & { hours?: Hours; zone: string; priority: Priority }) => {
    const { hours, zone, priority } = options;
    const when = new URLSearchParams({
      ...(hours ? { hours: `${hours.from}-${hours.to}`, zone } : {}),
      priority,
    });
    const asked = { method: 'POST', path: `/searches?${when}`, body: readSpecification(file) } as const;
    const { id } = await ask(options, asked, z.object({ id: z.string() }));
    const view = await ask(options, { method: 'GET', path: pathOf(id) }, searchViewSchema);
    await standardOutput(options.json ? jsonText(view) : standingText(view));
  });
  ofOne('watch', 'shows how far it is until it is over; to end the watching does not end the search').action(
    async (id: string, options: Options) => {
      const view = await watched(id, options);
      await standardOutput(options.json ? jsonText(view) : standingText(view));
      if (view.state === 'failed') throw notDone(view);
    },
  );
  for (const [verb, description, here] of verbs) {
    const command = ofOne(verb, description);
    if (here !== null) command.addOption(new Option('--database <file>', here).conflicts('server'));
    command.action(async (id: string, { database, ...options }: Options & { database?: string }) => {
      if (database !== undefined) return inDatabase(verb, id, { database, ...options });
      const view = await ask(options, { method: 'POST', path: `${pathOf(id)}/${verb}` }, searchViewSchema);
      await standardOutput(options.json ? jsonText(view) : standingText(view));
    });
  }
  ofOne('hours', 'between which times of day it is worked on')
    .argument('<hours>', 'such as 20:00-06:00, or any', (text) => (text === 'any' ? null : hoursIn(text)))
    .addOption(zoneOption())
    .action((id: string, hours: Hours | null, options: Options & { zone: string }) =>
      reschedule(id, options, { hours: hours === null ? null : { zone: options.zone, ...hours } }),
    );
  ofOne('priority', 'whether it goes before or behind others')
    .addArgument(new Argument('<priority>', 'among those that may be worked on').choices(priorities))
    .action((id: string, priority: Priority, options: Options) => reschedule(id, options, { priority }));
}

/** Goes on with a search that no service has, or ends it. */
async function inDatabase(
  verb: string,
  id: string,
  { database, json }: Options & { database: string },
): Promise<void> {
  const { cancelOnce, resumeOnce } = await import('../searching/searchOnce.ts');
  if (verb === 'resume') return resumeOnce(id, { database, ...(json && { json }) });
  const view = await cancelOnce(id, { database });
  await standardOutput(json ? jsonText(view) : standingText(view));
}

/** The search once it is over; until then it is shown. */
async function watched(id: string, options: Options): Promise<SearchView> {
  const bar = await progressBar();
  try {
    for (;;) {
      const view = await ask(options, { method: 'GET', path: pathOf(id) }, searchViewSchema);
      if (isOver(view.state)) return view;
      bar.show(view);
      await setTimeout(lookEveryMs);
    }
  } finally {
    bar.stop();
  }
}

/** Changes a part of when a search is worked on; the rest of it stays. */
async function reschedule(
  id: string,
  options: Options,
  change: Partial<SearchView['schedule']>,
): Promise<void> {
  const { schedule } = await ask(options, { method: 'GET', path: pathOf(id) }, searchViewSchema);
  const asked = { method: 'PUT', path: `${pathOf(id)}/schedule`, body: { ...schedule, ...change } } as const;
  const view = await ask(options, asked, searchViewSchema);
  await standardOutput(options.json ? jsonText(view) : scheduledText(view));
}

function whenOptions(command: Command): Command {
  return command
    .option('--hours <hours>', 'only between two times of day, such as 20:00-06:00', hoursIn)
    .addOption(zoneOption())
    .addOption(new Option('--priority <priority>', 'among the others').choices(priorities).default('usual'));
}

function zoneOption(): Option {
  const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  return new Option('--zone <zone>', 'of the hours; that of this computer if left out').default(timeZone);
}

function hoursIn(text: string): Hours {
  const [, from, to] = /^(\d\d:\d\d)-(\d\d:\d\d)$/.exec(text) ?? [];
  if (from === undefined || to === undefined)
    throw new InvalidArgumentError('Write two times of day with a dash between, as in 20:00-06:00.');
  return { from, to };
}

const pathOf = (id: string): string => `/searches/${encodeURIComponent(id)}`;

function ask<Answer>(options: Options, asked: Asked, form: z.ZodType<Answer>): Promise<Answer> {
  return askServer(serverAddress(options.server), asked, form);
}
