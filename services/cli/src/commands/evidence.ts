import type { OwnEvidence } from '@tiegel/insight';
import type { Command } from 'commander';
import { evidenceLines } from '../output/evidenceLines.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

/** `evidence`: how often criteria, phase estimate and strengths were right on the published alloys. */
export function evidenceCommand(program: Command): void {
  program
    .command('evidence')
    .description('how often rules, phase estimate and strengths were right on published alloys')
    .option('--database <file>', 'the same on the melts of this database')
    .option('--json', 'a JSON object on standard output')
    .action(async ({ database, json }: { database?: string; json?: true }) => {
      const { evidence } = await import('@tiegel/insight');
      const own = database === undefined ? null : await ownEvidenceIn(database);
      const found = { ...evidence(), own };
      await standardOutput(json ? jsonText(found) : evidenceLines(found));
    });
}

async function ownEvidenceIn(database: string): Promise<OwnEvidence | null> {
  const { ownEvidence } = await import('@tiegel/insight');
  const { openLaboratory } = await import('../searching/openLaboratory.ts');
  const { melts, close } = openLaboratory(database);
  try {
    const observed = melts.observed();
    return observed.length === 0 ? null : ownEvidence(observed);
  } finally {
    close();
  }
}
