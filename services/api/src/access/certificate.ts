import { readFileSync } from 'node:fs';
import { createSecureContext } from 'node:tls';
import { problem } from '@tiegel/contract/terms';
import type { Configuration } from '../configuration.ts';

/** What an encrypted server shows and keeps, as text in PEM. */
export interface Certificate {
  cert: string;
  key: string;
}

/**
 * Reads the files of a certificate and its key; null where the service speaks plain HTTP.
 * @throws ProblemError configuration/invalid for a file that cannot be read, is no PEM, or a key of another certificate
 */
export function readCertificate(tls: Configuration['tls']): Certificate | null {
  if (tls === null) return null;
  const cert = contentOf('TLS_CERTIFICATE', tls.certificate);
  const key = contentOf('TLS_KEY', tls.key);
  try {
    createSecureContext({ cert });
  } catch {
    throw refusal('TLS_CERTIFICATE', tls.certificate, 'the file of a certificate in PEM');
  }
  try {
    createSecureContext({ cert, key });
  } catch {
    throw refusal(
      'TLS_KEY',
      tls.key,
      'the file of the key of TLS_CERTIFICATE, in PEM and without a password',
    );
  }
  return { cert, key };
}

function contentOf(name: string, file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    throw refusal(name, file, 'a file that this program can read');
  }
}

function refusal(name: string, value: string, needed: string) {
  return problem('configuration/invalid', { name, value, needed }, `/${name}`);
}
