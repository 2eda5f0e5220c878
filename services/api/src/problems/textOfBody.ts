import { problem } from '@tiegel/contract/terms';

/** A mark at the beginning stays for whoever reads the text, as in a file. */
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/**
 * The text of a body, which is UTF-8: bytes of another encoding would be stored as other letters.
 * `type` is how such a body is sent. Throws request/content-type for another charset,
 * request/unreadable for bytes that are no UTF-8.
 */
export function textOfBody(bytes: Buffer, contentType: string | undefined, type: string): string {
  const [, charset = 'utf-8'] = /;\s*charset\s*=\s*"?([^\s;"]+)/i.exec(contentType ?? '') ?? [];
  if (!/^(?:utf-?8|us-ascii)$/i.test(charset)) {
    throw problem('request/content-type', {
      found: contentType ?? 'not stated',
      accepted: `${type}; charset=utf-8`,
    });
  }
  try {
    return decoder.decode(bytes);
  } catch {
    throw problem('request/unreadable', { what: 'its body is not text in UTF-8' });
  }
}
