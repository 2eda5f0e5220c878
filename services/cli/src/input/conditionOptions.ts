import { conditionInWords } from '@tiegel/contract/terms';
import { type ConditionName, conditionNames, conditions } from '@tiegel/screening';
import { type Command, InvalidArgumentError, Option } from 'commander';

/** The options of conditions as commander names them. */
export type ConditionOptions = { [Name in ConditionName]?: number };

/** Conditions that were set, by name, in the unit of each. */
export type Conditions = Readonly<Record<string, number>>;

/** Adds --service-temperature, --anneal-temperature, --strain-rate and --grain-size. */
export function conditionOptions(command: Command): void {
  for (const { name, label, unit, default: value, range } of Object.values(conditions)) {
    const flag = name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    const text = `${label.toLowerCase()}, ${unit} (default: ${value ?? 'none'})`;
    const option = new Option(`--${flag} <number>`, text);
    command.addOption(option.argParser((written) => numberWithin(written, range, unit)));
  }
}

/** The conditions that options set. */
export function conditionsIn(options: ConditionOptions): Conditions {
  const set = conditionNames.flatMap((name) => {
    const value = options[name];
    return value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(set);
}

/** Every condition with the value that it has: 'service temperature 293.15 K, ..., no grain size'. */
export function conditionsInWords(set: Conditions): string {
  return Object.values(conditions)
    .map(({ name, default: value, ...rest }) => conditionInWords({ ...rest, value: set[name] ?? value }))
    .join(', ');
}

function numberWithin(text: string, { min, max }: { min: number; max: number }, unit: string): number {
  const number = Number(text);
  if (text.trim() !== '' && number >= min && number <= max) return number;
  throw new InvalidArgumentError(`It must be a number from ${min} to ${max} ${unit}.`);
}
