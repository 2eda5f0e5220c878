import type { Command } from 'commander';
import { observedMelts } from '../input/observedMelts.ts';
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
      const found = { ...evidence(), ...(await onOwnMelts(database)) };
      await standardOutput(json ? jsonText(found) : evidenceLines(found));
    });
}

/** What the melts of a database say; nothing where none was named. */
async function onOwnMelts(database: string | undefined) {
  if (database === undefined) return { own: null, recalibration: null };
  const { ownEvidence, ownRecalibration, recalibrationInWords } = await import('@tiegel/insight');
  const observed = await observedMelts(database);
  const recalibration = ownRecalibration(observed);
  return {
    own: observed.length === 0 ? null : ownEvidence(observed),
    recalibration: { ...recalibration, words: recalibrationInWords(recalibration) },
  };
}
