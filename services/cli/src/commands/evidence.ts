import type { Command } from 'commander';
import { dataInForce } from '../input/dataInForce.ts';
import { evidenceLines } from '../output/evidenceLines.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

/** `evidence`: how often criteria, phase estimate and strengths were right on the published alloys. */
export function evidenceCommand(program: Command): void {
  program
    .command('evidence')
    .description('how often rules, phase estimate and strengths were right on published alloys')
    .option('--database <file>', 'the same on the melts of this database, and on alloys that were brought in')
    .option('--json', 'a JSON object on standard output')
    .action(async ({ database, json }: { database?: string; json?: true }) => {
      const { evidence } = await import('@tiegel/insight');
      const found = { ...evidence(), ...(await onOwnMelts(database)) };
      await standardOutput(json ? jsonText(found) : evidenceLines(found));
    });
}

/** What the melts of a database, and the alloys that were brought in, say; nothing where none was named. */
async function onOwnMelts(database: string | undefined) {
  if (database === undefined) return { own: null, broughtIn: null, recalibration: null };
  const { ownEvidence, ownRecalibration, recalibrationInWords } = await import('@tiegel/insight');
  const { melts, broughtIn } = await dataInForce({ database });
  const recalibration = ownRecalibration(melts);
  return {
    own: melts.length === 0 ? null : ownEvidence(melts),
    broughtIn: broughtIn.length === 0 ? null : ownEvidence(broughtIn, 'alloys'),
    recalibration: { ...recalibration, words: recalibrationInWords(recalibration) },
  };
}
