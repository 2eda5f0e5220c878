import { readFileSync, writeFileSync } from 'node:fs';
import { exhaustive, type Found } from '../test/flows/independent/exhaustive.ts';
import { referenceData } from '../test/flows/independent/referenceData.ts';
import { searchFixtures } from '../test/flows/independent/searchFixtures.ts';

/** Writes what the plain search finds beside each specification: npx node scripts/searchFixtures.ts [name ...] */
const wanted = process.argv.slice(2);
const data = referenceData();
for (const { name, specification, expected } of searchFixtures()) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const begun = performance.now();
  const found = exhaustive(JSON.parse(readFileSync(specification, 'utf8')), data);
  writeFileSync(expected, asText(found));
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  process.stderr.write(
    `${name}: ${found.counts.points} points, ${found.counts.passed} passed, ${seconds} s\n`,
  );
}

function asText({ counts, candidates }: Found): string {
  const lines = candidates.map((candidate) => `  ${JSON.stringify(candidate)}`).join(',\n');
  return `{ "counts": ${JSON.stringify(counts)},\n"candidates": [\n${lines}\n] }\n`;
}
