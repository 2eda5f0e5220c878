import { type Fault, ProblemError, problem } from '@tiegel/contract/terms';
import { type Composition, type Measure, parseAlloy } from '@tiegel/elements';

/** Lines of a file that hold an alloy each; empty lines are passed over. */
export function alloyLines(text: string): string[] {
  return text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/**
 * All alloys as compositions in at.%, in their order.
 * @throws ProblemError with the faults of every bad one, each named by its place and text
 */
export function readAlloys(texts: readonly string[], by: Measure): Composition[] {
  if (texts.length === 0) throw problem('command/nothing-to-screen');
  const faults: Fault[] = [];
  const compositions = texts.flatMap((text, index) => {
    try {
      return [parseAlloy(text, { by })];
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      const shown = text.length > 60 ? `${text.slice(0, 60)}…` : text;
      const named = ({ detail, ...rest }: Fault) => ({
        ...rest,
        detail: `Alloy ${index + 1}, "${shown}": ${detail}`,
      });
      faults.push(...error.faults.map(named));
      return [];
    }
  });
  if (faults.length > 0) throw new ProblemError(faults);
  return compositions;
}
