import { faultsOf, type Limit, limitsOn, ProblemError } from '@tiegel/contract';
import { quantities } from '@tiegel/screening';
import { type Command, InvalidArgumentError } from 'commander';

/** The options of single limits as commander names them: values by the id of a quantity. */
export interface LimitOptions {
  min?: Record<string, number>;
  max?: Record<string, number>;
}

/** Adds --min density=7 and --max density=8, each given once or several times, or with commas between. */
export function limitOptions(command: Command): void {
  command
    .option('--min <quantity=value>', 'a lower limit, such as valenceElectronConcentration=7.6', valuesById)
    .option('--max <quantity=value>', 'an upper limit, such as density=8; more with commas', valuesById);
}

/**
 * The limits that options set, one a quantity, in the order of writing, lower ones first.
 * @throws ProblemError quantity/unknown and what else is wrong with a limit
 */
export function limitsIn(options: LimitOptions): Limit[] {
  const limits = boundsIn(options);
  const faults = faultsOf(limitsOn(quantities.map(({ id }) => id)), limits);
  // A place in a list that nobody wrote helps nobody: each fault names its quantity.
  if (faults.length > 0) throw new ProblemError(faults.map((one) => ({ ...one, pointer: '' })));
  return limits;
}

/** The same, unchecked: whether there is such a quantity is known to who has the candidates. */
export function boundsIn({ min = {}, max = {} }: LimitOptions): Limit[] {
  const ids = [...new Set([...Object.keys(min), ...Object.keys(max)])];
  return ids.map((quantity) => ({
    quantity,
    ...(quantity in min ? { min: min[quantity]! } : {}),
    ...(quantity in max ? { max: max[quantity]! } : {}),
  }));
}

function valuesById(text: string, before: Record<string, number> = {}): Record<string, number> {
  const values = { ...before };
  for (const part of text.split(',')) {
    const found = /^\s*(\w+)\s*=\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d+)?)\s*$/i.exec(part);
    if (found === null)
      throw new InvalidArgumentError(`Write a quantity and a number, as in density=8, not "${part}".`);
    const [, id = '', value] = found;
    if (id in values) throw new InvalidArgumentError(`${id} stands there twice.`);
    values[id] = Number(value);
  }
  return values;
}
