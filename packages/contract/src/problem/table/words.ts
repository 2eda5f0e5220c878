export interface Found {
  place: string;
  found: string;
  right: string;
}

export interface Length {
  size: number;
  of: string;
  word: string;
  bound: number;
}

/** How a sentence ends that names a near miss: `meant` is '' where nothing is near. */
export function orMeant(meant: string): string {
  return meant === '' ? '.' : `: did you mean "${meant}"?`;
}

/** How a sentence begins that tells of a file which was read. */
export function fileRead(file: string): string {
  return file === '-' ? 'Standard input' : `The file ${file}`;
}
