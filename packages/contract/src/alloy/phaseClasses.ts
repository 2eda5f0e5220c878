/** What an alloy is, as usually made: one fcc or one bcc solution, both side by side, anything else. */
export const phaseClasses = ['fcc', 'bcc', 'both', 'other'] as const;
export type PhaseClass = (typeof phaseClasses)[number];
