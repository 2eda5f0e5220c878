import { decimalsBeside } from '@tiegel/contract/terms';

/** Why there is no strength near the melting point. */
export const TOO_HOT = 'No value above 0.9 of the melting temperature, where diffusion decides.';

/** Why no error stands beside the strength of atoms that hardly differ in volume. */
export function tooAlike(misfit: number, least: number): string {
  return `The volume misfit of ${misfitInWords(misfit, least)} is below that of every alloy that the error was measured on (${Number((100 * least).toFixed(1))} %): solutes give next to nothing there, and other obstacles decide.`;
}

/** A volume misfit with the decimals that tell on which side of a border it lies, as in '7.96 %'. */
export function misfitInWords(misfit: number, border: number): string {
  const [percent, at] = [100 * misfit, 100 * border];
  return `${percent.toFixed(decimalsBeside(percent, at, 1))} %`;
}

/** The sentences that hold, as one text; null where none does. */
export function reasons(...sentences: (string | false)[]): string | null {
  return sentences.filter((sentence) => sentence !== false).join(' ') || null;
}
