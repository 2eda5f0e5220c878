/** What was found, as a message can show it. */
export const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
