/** The most that is believed of what is measured on a melt; all of it is above 0. */
export const meltMost = {
  /** g, of one material */
  mass: 1e7,
  /** g */
  ingot: 1e7,
  /** K, of an anneal */
  temperature: 5000,
  /** of an anneal */
  hours: 1e5,
  /** HV */
  hardness: 1e4,
  /** g/cm3 */
  density: 30,
} as const;

/** characters of a name, a material or a number of a charge sheet */
export const longestMeltLine = 200;
/** characters */
export const longestMeltNotes = 5000;
/** bytes of a file that is attached */
export const largestAttachment = 20_000_000;
/** materials of one melt */
export const mostWeighed = 30;
