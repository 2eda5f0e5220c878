/** The forms of a file of candidates, each called as its name ends. */
export const exportFormats = ['csv', 'ndjson', 'parquet', 'xlsx'] as const;
export type ExportFormat = (typeof exportFormats)[number];

/** The forms of a file of systems. */
export const systemsFormats = ['csv', 'ndjson'] as const;
export type SystemsFormat = (typeof systemsFormats)[number];

/** The forms of a shortlist as a file. */
export const shortlistFormats = ['html', 'csv'] as const;
export type ShortlistFormat = (typeof shortlistFormats)[number];
