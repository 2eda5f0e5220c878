export const builtInto: string;
export function builtFolder(into?: string): string | null;
