import { readdirSync, readFileSync } from 'node:fs';

/** What is wrong in a fixture of test/fixtures/malformed: its code, and the place as a JSON pointer. */
interface ExpectedFault {
  code: string;
  pointer: string;
}

export interface MalformedFixture {
  name: string;
  /** the text as a person or a program would send it */
  text: string;
  faults: ExpectedFault[];
}

/** The fixtures of one kind, each a file x.json, x.txt or x.csv with x.expected.json beside it. */
export function malformedFixtures(kind: 'specification' | 'alloy' | 'prices'): MalformedFixture[] {
  const folder = new URL(`../fixtures/malformed/${kind}/`, import.meta.url);
  const read = (file: string) => readFileSync(new URL(file, folder), 'utf8');
  return readdirSync(folder)
    .filter((file) => !file.endsWith('.expected.json'))
    .map((file) => {
      const name = file.replace(/\.\w+$/, '');
      return { name, text: read(file), faults: JSON.parse(read(`${name}.expected.json`)) };
    });
}
