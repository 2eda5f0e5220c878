/** How far an entry of a shortlist is, in the words of the pages; the first is where it begins. */
export const shortlistStatuses = ['proposed', 'agreed', 'to melt', 'melted', 'set aside'] as const;
export type ShortlistStatus = (typeof shortlistStatuses)[number];
