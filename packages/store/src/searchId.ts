import { randomBytes } from 'node:crypto';

/** Digits and small letters that are not taken for one another; 32 of them, 5 bits each. */
const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';

/** A new id: 12 characters, 60 random bits, safe in addresses, file names and queues' keys. */
export function searchId(): string {
  return Array.from(randomBytes(12), (byte) => alphabet[byte % 32]).join('');
}
