import type { Command } from 'commander';
import { commandsOf, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { chargeText } from '../output/chargeText.ts';
import { jsonText } from '../output/jsonText.ts';
import { sheetsText } from '../output/sheetsText.ts';
import { inLaboratory } from '../searching/inLaboratory.ts';

/** `charge-sheets`: those that were saved under a number, as their routes tell them. */
export function chargeSheetsCommand(program: Command): void {
  const parent = program
    .command('charge-sheets')
    .description('charge sheets that were saved under a number: list, show');
  const named = commandsOf(parent);
  named('list', 'every one, the newest first').action((options: LaboratoryOptions) =>
    inLaboratory(options, ({ chargeSheets }) => {
      const all = chargeSheets.list();
      return options.json ? jsonText(all) : sheetsText(all);
    }),
  );
  named('show', 'one as it was saved')
    .argument('<number>', 'such as C-0007')
    .action((number: string, options: LaboratoryOptions) =>
      inLaboratory(options, ({ chargeSheets }) => {
        const sheet = chargeSheets.view(number);
        if (options.json) return jsonText(sheet);
        return chargeText(sheet, { invented: null, number: sheet.number, saved: sheet });
      }),
    );
}
