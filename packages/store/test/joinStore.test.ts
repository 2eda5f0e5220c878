import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { ProblemError } from '@tiegel/contract';
import Database from 'better-sqlite3';
import { expect, onTestFinished, test } from 'vitest';
import { type JoinedStore, joinStore, openStore } from '../src/index.ts';
import { columns, freshFile, openTestStore } from './fixtures/files.ts';
import { keptSearch } from './fixtures/searches.ts';

const at = '2026-11-29T08:15:00.000Z';

function joined(file: string): JoinedStore {
  const store = joinStore({ file, columns });
  onTestFinished(() => store.close());
  return store;
}

function codeOf(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults[0]!.code;
    throw error;
  }
  return 'nothing was thrown';
}

/** Another process that joins the file, runs these statements over `store` as soon as it is told to, and ends. */
async function otherProcess(file: string, statements: string) {
  const script = `
    import { joinStore } from ${JSON.stringify(new URL('../src/index.ts', import.meta.url).href)};
    const at = ${JSON.stringify(at)};
    const store = joinStore(${JSON.stringify({ file, columns })});
    console.log('joined');
    process.stdin.once('data', () => {
      ${statements}
      store.close();
      process.exit(0);
    });`;
  const child = spawn(process.execPath, ['--input-type=module-typescript', '-e', script], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  const ended = once(child, 'exit');
  await once(child.stdout, 'data');
  return {
    go: () => child.stdin.write('go\n'),
    ended: ended.then(([code]) => code as number | null),
  };
}

test('whether some process works on the searches is told, and joining is not working on them', () => {
  const file = freshFile();
  const store = openTestStore(file);
  const other = joined(file);
  expect([store.isWorkedOn(), other.isWorkedOn()]).toEqual([true, true]);
  store.close();
  expect(other.isWorkedOn()).toBe(false);
  openTestStore(file);
  expect(other.isWorkedOn()).toBe(true);
});

test('another process writes down what it has while this one works on the searches, and this one sees it', async () => {
  const file = freshFile();
  const store = openTestStore(file);
  const { id } = keptSearch(store);
  const other = await otherProcess(
    file,
    `store.melts.create({ name: 'theirs' }, at);
     store.chargeSheets.save({ mass: 50 }, at);
     const list = store.shortlists.create(at);
     store.shortlists.take(list.id, [{ key: 'k', by: 'they', seen: 0, act: { kind: 'rename', name: store.searches.find('${id}').question } }], at);`,
  );
  other.go();
  expect(await other.ended).toBe(0);
  expect(store.melts.list().map(({ entry }) => entry)).toEqual([{ name: 'theirs' }]);
  expect(store.chargeSheets.list()).toHaveLength(1);
  const [list] = store.shortlists.list();
  expect(store.shortlists.changes(list!.id)).toMatchObject([{ act: { name: 'three of Al Cr Fe' } }]);
});

test('two processes that write at once lose nothing, and no number is given twice', async () => {
  const file = freshFile();
  const store = openTestStore(file);
  const { number } = keptSearch(store, 400);
  const list = store.shortlists.create(at);
  const many = 150;
  const other = await otherProcess(
    file,
    `for (let turn = 0; turn < ${many}; turn += 1) {
       store.chargeSheets.save({ by: 'theirs', turn }, at);
       store.melts.create({ by: 'theirs', turn }, at);
       store.shortlists.take('${list.id}', [{ key: 'theirs' + turn, by: 'they', seen: 0, act: { kind: 'add', entry: 'Al' + turn } }], at);
     }`,
  );
  other.go();
  const counts = { systems: 1, points: 18, passed: 0, passedEach: [], outside: {} };
  for (let turn = 0; turn < many; turn += 1) {
    store.chargeSheets.save({ by: 'ours', turn }, at);
    store.melts.create({ by: 'ours', turn }, at);
    const change = { key: `ours${turn}`, by: 'we', seen: 0 };
    store.shortlists.take(list.id, [{ ...change, act: { kind: 'add', entry: `Fe${turn}` } }], at);
    // The work on a search goes on meanwhile.
    expect(store.ledger.take(number, turn, new Uint8Array(3000), { counts, activeSeconds: turn })).toBe(true);
    // Without a pause the other one would have to wait for its end.
    await new Promise(setImmediate);
  }
  expect(await other.ended).toBe(0);
  const wanted = ['ours', 'theirs'].flatMap((by) =>
    Array.from({ length: many }, (_, turn) => `${by} ${turn}`),
  );
  const said = (one: unknown) => Object.values(one as object).join(' ');
  const sheets = store.chargeSheets.list();
  expect(sheets.map(({ sheet }) => said(sheet)).sort()).toEqual(wanted.toSorted());
  expect(sheets.map((one) => one.number).sort((a, b) => a - b)).toEqual(
    Array.from({ length: 2 * many }, (_, place) => place + 1),
  );
  expect(
    store.melts
      .list()
      .map(({ entry }) => said(entry))
      .sort(),
  ).toEqual(wanted.toSorted());
  expect(new Set(store.shortlists.changes(list.id).map(({ act }) => 'entry' in act && act.entry)).size).toBe(
    2 * many,
  );
  expect(store.ledger.unfinishedCount(number)).toBe(400 - many);
}, 60_000);

test('a file that is not there is made, and then nobody is kept from working on its searches', () => {
  const file = freshFile();
  const first = joined(file);
  first.melts.create({ name: 'first' }, at);
  expect(openTestStore(file).melts.list()).toHaveLength(1);
  expect(joined(file).melts.list()).toHaveLength(1);
});

test('a database of an older form, or without a column, is not made anew under whoever works on it', () => {
  const file = freshFile();
  const owner = openStore({ file, columns });
  expect(codeOf(() => joinStore({ file, columns: [...columns, 'newer'] }))).toBe('store/in-use');
  owner.close();
  const more = joinStore({ file, columns: [...columns, 'newer'] });
  more.close();
  const older = new Database(file);
  older.pragma('user_version = 0');
  older.close();
  const lock = new Database(`${file}-owner`);
  lock.exec('begin exclusive');
  expect(codeOf(() => joinStore({ file, columns }))).toBe('store/in-use');
  lock.close();
});

test('what another connection brings or withdraws makes another state of the imports, and nothing else does', () => {
  const file = freshFile();
  const store = openTestStore(file);
  const { number } = keptSearch(store);
  const other = joined(file);
  const counts = { new: 1, changed: 0, same: 0, refused: 0 };
  const enter = (one: JoinedStore) =>
    one.imports.enter({ kind: 'pairs', subject: '', name: '', data: [], rows: 1, counts }, at).stored.number;
  const states = [store.imports.state()];
  const look = () => states.push(store.imports.state());
  store.searches.change(number, { state: 'running' });
  other.melts.create({ name: 'a melt' }, at);
  look();
  expect(states[1]).toBe(states[0]);
  const first = enter(other);
  look();
  other.imports.setWithdrawn(first, at);
  look();
  other.imports.setWithdrawn(first, null);
  enter(other);
  look();
  expect(new Set(states).size).toBe(4);
});
