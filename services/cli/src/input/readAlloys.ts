import { type Fault, ProblemError, problem } from '@tiegel/contract/terms';
import { type Composition, type Measure, parseAlloy } from '@tiegel/elements';

/** An alloy as it was written, and where: 'Alloy 2' of the arguments, 'Line 4 of alloys.txt'. */
export interface WrittenAlloy {
  text: string;
  place: string;
}

/** The alloys that were named as arguments. */
export function alloyArguments(texts: readonly string[]): WrittenAlloy[] {
  return texts.map((text, at) => ({ text, place: `Alloy ${at + 1}` }));
}

/** Lines of a file ('-': standard input) that hold an alloy each; empty lines are passed over, but counted. */
export function alloyLines(text: string, file: string): WrittenAlloy[] {
  const source = file === '-' ? 'standard input' : file;
  return text
    .split(/\r?\n/)
    .map((line, at) => ({ text: line.trim(), place: `Line ${at + 1} of ${source}` }))
    .filter((one) => one.text !== '');
}

/**
 * All alloys as compositions in at.%, in their order.
 * @throws ProblemError with the faults of every bad one, each named by its place and text
 */
export function readAlloys(alloys: readonly WrittenAlloy[], by: Measure): Composition[] {
  if (alloys.length === 0) throw problem('command/nothing-to-screen');
  const faults: Fault[] = [];
  const compositions = alloys.flatMap(({ text, place }) => {
    try {
      return [parseAlloy(text, { by })];
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      const shown = text.length > 60 ? `${text.slice(0, 60)}…` : text;
      const named = ({ detail, ...rest }: Fault) => ({ ...rest, detail: `${place}, "${shown}": ${detail}` });
      faults.push(...error.faults.map(named));
      return [];
    }
  });
  if (faults.length > 0) throw new ProblemError(faults);
  return compositions;
}
