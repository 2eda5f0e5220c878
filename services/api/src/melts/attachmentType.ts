/** The types of files that are kept, by what is in them; the name says nothing. */
export type AttachmentType =
  | 'image/png'
  | 'image/jpeg'
  | 'image/webp'
  | 'image/tiff'
  | 'application/pdf'
  | 'text/plain';

/** First bytes in hexadecimal digits, as in the specifications of the formats. */
const beginnings: readonly (readonly [AttachmentType, RegExp])[] = [
  ['image/png', /^89504e470d0a1a0a/],
  ['image/jpeg', /^ffd8ff/],
  // 'RIFF', a length, 'WEBP'
  ['image/webp', /^52494646.{8}57454250/],
  ['image/tiff', /^(?:49492a00|4d4d002a)/],
  // '%PDF-'
  ['application/pdf', /^255044462d/],
];

/**
 * What kind of file this is, by its content; null for one that is not kept. A diffraction pattern or
 * any other measurement is text: UTF-8 or ASCII without control characters. Text that is a page or a
 * script is text as well here: it is never served as anything else.
 */
export function attachmentType(content: Buffer): AttachmentType | null {
  const head = content.subarray(0, 16).toString('hex');
  const known = beginnings.find(([, pattern]) => pattern.test(head));
  if (known) return known[0];
  return isText(content) ? 'text/plain' : null;
}

function isText(content: Buffer): boolean {
  if (content.length === 0) return false;
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(content);
    // Tab, line feed, form feed and carriage return are what text is made of, too.
    return !/[^\P{Cc}\t\n\f\r]/u.test(text);
  } catch {
    return false;
  }
}
