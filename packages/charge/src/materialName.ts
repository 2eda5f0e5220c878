/** The name by which a material is told from others: an ü that is one sign and one that is two (Unicode's normal forms) look alike, and are. */
export const materialName = (written: string): string => written.trim().normalize('NFC');
