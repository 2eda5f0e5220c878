import { join } from 'node:path';
import { ProblemError } from '@tiegel/contract/terms';
import { expect, test } from 'vitest';
import { readCertificate } from '../../src/access/certificate.ts';

const fixture = (name: string) => join(import.meta.dirname, '../fixtures/tls', name);
const [certificate, key] = [fixture('certificate.pem'), fixture('key.pem')];

test('no files, no encryption', () => {
  expect(readCertificate(null)).toBeNull();
});

test.each([
  [{ certificate: fixture('none.pem'), key }, '/TLS_CERTIFICATE', 'that this program can read'],
  [{ certificate: fixture('.'), key }, '/TLS_CERTIFICATE', 'that this program can read'],
  [{ certificate: key, key }, '/TLS_CERTIFICATE', 'a certificate in PEM'],
  [{ certificate, key: certificate }, '/TLS_KEY', 'the key of TLS_CERTIFICATE'],
  [{ certificate, key: fixture('otherKey.pem') }, '/TLS_KEY', 'the key of TLS_CERTIFICATE'],
])('files that do not serve are refused before anything listens: %o', (tls, pointer, words) => {
  try {
    readCertificate(tls);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const [{ code, pointer: place, remedy } = error.faults[0]!] = error.faults;
    expect({ code, place }).toEqual({ code: 'configuration/invalid', place: pointer });
    expect(remedy).toContain(words);
    return;
  }
  expect.unreachable();
});
