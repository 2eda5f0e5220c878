/** What a scoring thread runs. Where the program is built (scripts/buildTerminal.ts), its file beside the others. */
export const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));
