import { symbols } from '@tiegel/elements';
import { openStore } from '@tiegel/store';
import { candidateColumns, openImports } from '../../src/index.ts';

/** Stores file after file of many rows in the database named, and says each number; ends when it is killed. */
const imports = openImports(openStore({ file: process.argv[2]!, columns: candidateColumns }));
const pairs = symbols.flatMap((a, at) => symbols.slice(at + 1).map((b) => `${a},${b}`));
for (let value = 1; ; value++) {
  const text = `a,b,mixingEnthalpy\n${pairs.map((pair) => `${pair},${value % 100}`).join('\n')}\n`;
  console.log(imports.enter('pairs', text).number);
}
