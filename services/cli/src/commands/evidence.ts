import type { Command } from 'commander';
import { evidenceLines } from '../output/evidenceLines.ts';
import { jsonText } from '../output/jsonText.ts';
import { standardOutput } from '../output/standardOutput.ts';

/** `evidence`: how often criteria, phase estimate and strengths were right on the published alloys. */
export function evidenceCommand(program: Command): void {
  program
    .command('evidence')
    .description('how often rules, phase estimate and strengths were right on published alloys')
    .option('--json', 'a JSON object on standard output')
    .action(async ({ json }: { json?: true }) => {
      const { evidence } = await import('@tiegel/insight');
      const found = evidence();
      await standardOutput(json ? jsonText(found) : evidenceLines(found));
    });
}
