/** characters of what a charge sheet or an import is called */
export const longestName = 200;
