import { once } from 'node:events';
import { PassThrough, type Readable } from 'node:stream';
import { crc32, createDeflateRaw } from 'node:zlib';

/** A file of an archive: its name, and its text piece by piece. */
export interface ZipEntry {
  name: string;
  text: Iterable<string>;
}

/** What the end of an archive tells of an entry. */
interface Written {
  name: Buffer;
  crc: number;
  packed: number;
  size: number;
  offset: number;
}

/** Sizes follow behind an entry (bit 3), names are UTF-8 (bit 11), packed by deflate (8); no clock, so that the same rows make the same file. */
const flags = 0x0808;
const deflated = 8;
const version = 20;
/** 1980-01-01, the first day that the format knows. */
const firstDay = 0x0021;
/** Text is packed in pieces of about this many characters. */
const pieceLength = 64 * 1024;

/**
 * A zip archive that is written as its reader takes it, so that no entry is held in memory. For
 * entries and archives below 4 GB.
 * @source PKWARE APPNOTE 6.3.10, sections 4.3 and 4.4 (field layout from memory)
 */
export function zipFile(entries: Iterable<ZipEntry>): Readable {
  const file = new PassThrough();
  write(entries, file).then(
    () => file.end(),
    (error: Error) => file.destroy(error),
  );
  return file;
}

async function write(entries: Iterable<ZipEntry>, file: PassThrough): Promise<void> {
  const gone = new AbortController();
  file.once('close', () => gone.abort());
  let offset = 0;
  const put = async (bytes: Buffer) => {
    gone.signal.throwIfAborted();
    offset += bytes.length;
    if (!file.write(bytes)) await once(file, 'drain', { signal: gone.signal });
  };
  const written: Written[] = [];
  for (const { name, text } of entries) {
    const entry: Written = { name: Buffer.from(name), crc: 0, packed: 0, size: 0, offset };
    await put(localHead(entry));
    const packer = createDeflateRaw();
    const packing = feed(packer, pieces(text), entry);
    packing.catch((error: Error) => packer.destroy(error));
    for await (const bytes of packer as AsyncIterable<Buffer>) {
      entry.packed += bytes.length;
      await put(bytes);
    }
    await packing;
    await put(descriptor(entry));
    written.push(entry);
  }
  const start = offset;
  for (const entry of written) await put(centralHead(entry));
  await put(endOf(written.length, offset - start, start));
}

async function feed(
  packer: ReturnType<typeof createDeflateRaw>,
  text: Iterable<string>,
  entry: Written,
): Promise<void> {
  for (const piece of text) {
    const bytes = Buffer.from(piece);
    entry.crc = crc32(bytes, entry.crc);
    entry.size += bytes.length;
    if (!packer.write(bytes)) await once(packer, 'drain');
  }
  packer.end();
}

/** The same text in pieces that are worth packing. */
function* pieces(text: Iterable<string>): Generator<string> {
  let piece = '';
  for (const part of text) {
    piece += part;
    if (piece.length < pieceLength) continue;
    yield piece;
    piece = '';
  }
  if (piece !== '') yield piece;
}

function localHead({ name }: Written): Buffer {
  const head = Buffer.alloc(30);
  head.write('PK\x03\x04', 'latin1');
  head.writeUInt16LE(version, 4);
  head.writeUInt16LE(flags, 6);
  head.writeUInt16LE(deflated, 8);
  head.writeUInt16LE(firstDay, 12);
  head.writeUInt16LE(name.length, 26);
  return Buffer.concat([head, name]);
}

function descriptor({ crc, packed, size }: Written): Buffer {
  const tail = Buffer.alloc(16);
  tail.write('PK\x07\x08', 'latin1');
  tail.writeUInt32LE(crc, 4);
  tail.writeUInt32LE(packed, 8);
  tail.writeUInt32LE(size, 12);
  return tail;
}

function centralHead({ name, crc, packed, size, offset }: Written): Buffer {
  const head = Buffer.alloc(46);
  head.write('PK\x01\x02', 'latin1');
  head.writeUInt16LE(version, 4);
  head.writeUInt16LE(version, 6);
  head.writeUInt16LE(flags, 8);
  head.writeUInt16LE(deflated, 10);
  head.writeUInt16LE(firstDay, 14);
  head.writeUInt32LE(crc, 16);
  head.writeUInt32LE(packed, 20);
  head.writeUInt32LE(size, 24);
  head.writeUInt16LE(name.length, 28);
  head.writeUInt32LE(offset, 42);
  return Buffer.concat([head, name]);
}

function endOf(count: number, size: number, start: number): Buffer {
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(count, 8);
  end.writeUInt16LE(count, 10);
  end.writeUInt32LE(size, 12);
  end.writeUInt32LE(start, 16);
  return end;
}
