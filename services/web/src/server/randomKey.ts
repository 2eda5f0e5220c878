/** A key by which the server knows a request that is sent again. crypto.randomUUID is missing where a page on a network comes over plain HTTP. */
export function randomKey(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
}
