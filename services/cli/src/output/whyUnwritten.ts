/** Why something is not written, in words. */
export function whyUnwritten({ code, message }: NodeJS.ErrnoException): string {
  const words: Record<string, string> = {
    ENOENT: 'its folder is not there',
    ENOTDIR: 'its folder is a file',
    EISDIR: 'it is a folder',
    EACCES: 'the folder may not be written in',
    EPERM: 'the folder may not be written in',
    EROFS: 'the folder may only be read',
    ENOSPC: 'the disk is full',
  };
  return words[code ?? ''] ?? message;
}
