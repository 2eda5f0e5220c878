import type { Role } from '@tiegel/contract';
import { longestHolderName, roleInWords, roles } from '@tiegel/contract/terms';
import { type Command, Option } from 'commander';
import { commandsOf, type LaboratoryOptions } from '../input/laboratoryOptions.ts';
import { textUpTo } from '../input/textUpTo.ts';
import { givenText, tokensText } from '../output/accessText.ts';
import { jsonText } from '../output/jsonText.ts';
import { changeLaboratory, inLaboratory } from '../searching/inLaboratory.ts';

/**
 * `access`: who may use a service that was started with TOKENS=yes. Whoever may write to its database decides:
 * nobody gives tokens out over the network.
 */
export function accessCommand(program: Command): void {
  const parent = program
    .command('access')
    .description('who may use a server that asks for tokens (TOKENS=yes): give, list, withdraw');
  const named = commandsOf(parent);
  const does = roles.map((role) => `${role}: may ${roleInWords(role)}`).join('; ');
  named('give', 'give somebody a token, which is told this once')
    .argument('<name>', 'of the person or program', textUpTo(longestHolderName))
    .addOption(new Option('--role <role>', does).choices(roles).makeOptionMandatory())
    .action((name: string, { role, ...options }: LaboratoryOptions & { role: Role }) =>
      changeLaboratory(options, ({ tokens }) => {
        const given = tokens.give(name, role);
        return options.json ? jsonText(given) : givenText(given);
      }),
    );
  named('list', 'who has a token, and who had one').action((options: LaboratoryOptions) =>
    inLaboratory(options, ({ tokens }) => {
      const all = tokens.list();
      return options.json ? jsonText(all) : tokensText(all);
    }),
  );
  named('withdraw', 'take a token out of force, at once')
    .argument('<name>', 'as "access list" shows it')
    .action((name: string, options: LaboratoryOptions) =>
      inLaboratory(options, ({ tokens }) => {
        tokens.withdraw(name);
        const all = tokens.list();
        return options.json ? jsonText(all) : tokensText(all);
      }),
    );
}
