import type { Connection } from './sharing/connections.ts';

/** Digits and small letters that are not taken for one another; 32 of them, 5 bits each. */
const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';

/**
 * A new id: 12 characters, 60 random bits, safe in addresses, file names and queues' keys. The bits are
 * SQLite's, which the system seeds: loading Node's cryptography for them takes 13 ms of a short command.
 */
export function newId(connection: Connection): string {
  const bytes = connection.prepare('select randomblob(12)').pluck().get() as Buffer;
  return Array.from(bytes, (byte) => alphabet[byte % 32]).join('');
}
