import { buffer } from 'node:stream/consumers';
import { crc32, inflateRawSync } from 'node:zlib';
import { formatComposition } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { exportColumns } from '../../src/exports/exportColumns.ts';
import { spreadsheet } from '../../src/exports/spreadsheet.ts';
import { candidateNumber, candidates, exportOf } from '../fixtures/exportOf.ts';

/** The files of a zip archive, by its central directory (PKWARE APPNOTE 4.3.12; offsets from memory). */
function unzipped(archive: Buffer): Map<string, string> {
  const end = archive.lastIndexOf(Buffer.from('PK\x05\x06'));
  let at = archive.readUInt32LE(end + 16);
  const files = new Map<string, string>();
  for (let left = archive.readUInt16LE(end + 10); left > 0; left -= 1) {
    const [size, nameLength, extra, comment] = [
      archive.readUInt32LE(at + 20),
      archive.readUInt16LE(at + 28),
      archive.readUInt16LE(at + 30),
      archive.readUInt16LE(at + 32),
    ];
    const name = archive.toString('utf8', at + 46, at + 46 + nameLength);
    const local = archive.readUInt32LE(at + 42);
    const start = local + 30 + archive.readUInt16LE(local + 26) + archive.readUInt16LE(local + 28);
    const packed = archive.subarray(start, start + size);
    const content = inflateRawSync(packed);
    expect(crc32(content)).toBe(archive.readUInt32LE(at + 16));
    expect(content.length).toBe(archive.readUInt32LE(at + 24));
    files.set(name, content.toString('utf8'));
    at += 46 + nameLength + extra + comment;
  }
  return files;
}

/** The cells of a sheet as they stand in its XML. */
function cellsOf(files: Map<string, string>, sheet: string): (string | null)[][] {
  const plain = (text: string) =>
    text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));
  const rows = [...files.get(`xl/worksheets/${sheet}.xml`)!.matchAll(/<row>(.*?)<\/row>/gs)];
  return rows.map(([, row]) =>
    [...row!.matchAll(/<c\b[^>]*?(?:\/>|>(.*?)<\/c>)/gs)].map(([, inner = '']) => {
      const words = /<t[^>]*>(.*?)<\/t>/s.exec(inner)?.[1];
      return words === undefined ? (/<v>(.*?)<\/v>/s.exec(inner)?.[1] ?? null) : plain(words);
    }),
  );
}

const whole = exportOf(candidates(30));
const archive = await buffer(spreadsheet(whole));
const files = unzipped(archive);

test('every candidate is a row, with the same numbers to the last bit, and the head names units', () => {
  const [head, ...rows] = cellsOf(files, 'sheet1');
  const columns = exportColumns(whole.head);
  expect(head).toEqual(columns.map(({ name, unit }) => (unit === '' ? name : `${name} (${unit})`)));
  expect(rows).toHaveLength(30);
  rows.forEach((cells, index) => {
    const candidate = candidateNumber(index + 1);
    expect(cells[1]).toBe(formatComposition(candidate.composition));
    const read = cells.map((cell, place) => (place === 1 || cell === null ? cell : Number(cell)));
    expect(read).toEqual(columns.map(({ value }) => value(candidate)));
  });
});

test('a second sheet says all that the rows depend on', () => {
  const facts = Object.fromEntries(cellsOf(files, 'sheet2') as [string, string][]);
  expect(facts.dataVersion).toBe('data-1');
  expect(facts.engineVersion).toBe('engine-1');
  expect(JSON.parse(facts.specification!)).toEqual(whole.about.specification);
  expect(facts.name).toBe('A name # counts: {} of "two" lines, with commas');
});

test('each part that is named is there, and the parts are well-formed', () => {
  const named = [...files.get('[Content_Types].xml')!.matchAll(/PartName="\/(.*?)"/g)].map(
    ([, name]) => name,
  );
  expect([...files.keys()]).toEqual(expect.arrayContaining(named));
  for (const text of files.values()) {
    // Every element that opens is closed, in order.
    const open: string[] = [];
    for (const [, closes, name, alone] of text.matchAll(/<(\/?)([\w:]+)[^<>]*?(\/?)>/g)) {
      if (closes) expect(open.pop()).toBe(name);
      else if (!alone) open.push(name!);
    }
    expect(open).toEqual([]);
  }
});

test('the same rows make the same file', async () => {
  expect((await buffer(spreadsheet(exportOf(candidates(30))))).equals(archive)).toBe(true);
});

test('rows are read no faster than the file is taken', async () => {
  let read = 0;
  function* counted() {
    for (const candidate of candidates(200_000)) {
      read += 1;
      yield candidate;
    }
  }
  const file = spreadsheet(exportOf(counted()));
  await new Promise((resolve) => file.once('readable', resolve));
  for (let turn = 0; turn < 50; turn += 1) await new Promise((resolve) => setImmediate(resolve));
  expect(read).toBeLessThan(50_000);
  file.destroy();
});

test('a name with characters that XML knows none of leaves a file that every reader takes', async () => {
  const { about, ...one } = exportOf(candidates(1));
  const named = { ...about, name: 'a\u0001b\ufffec\uffffd' };
  const texts = cellsOf(unzipped(await buffer(spreadsheet({ ...one, about: named }))), 'sheet2');
  expect(texts.find(([key]) => key === 'name')).toEqual(['name', 'abcd']);
});
