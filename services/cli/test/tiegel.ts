import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const main = fileURLToPath(new URL('../src/main.ts', import.meta.url));

/** What a run of the program left behind. */
export interface Ran {
  code: number | null;
  out: string;
  error: string;
}

export interface RunOptions {
  input?: string;
  environment?: Record<string, string>;
  /** stops reading standard output, as `| head` does, as soon as it has so many characters */
  readOnly?: number;
}

/** Runs the program as a process of its own. */
export function tiegel(
  words: readonly string[],
  { input, environment, readOnly }: RunOptions = {},
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [main, ...words], { env: { ...process.env, ...environment } });
    const ran: Ran = { code: null, out: '', error: '' };
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      ran.out += text;
      if (readOnly !== undefined && ran.out.length >= readOnly) child.stdout.destroy();
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      ran.error += text;
    });
    child.on('error', reject).on('close', (code) => resolve({ ...ran, code }));
    child.stdin.on('error', () => {}).end(input ?? '');
  });
}

/** The JSON that a run wrote, and nothing but JSON. */
export async function jsonOf(words: readonly string[], options?: RunOptions) {
  const { code, out, error } = await tiegel([...words, '--json'], options);
  if (code !== 0) throw new Error(`exit ${code}: ${error}`);
  return JSON.parse(out);
}
