const largest = 20_000_000; // bytes

/** The text of a file, or what is wrong with it in words. */
export async function readTextFile(file: File): Promise<{ text: string } | { wrong: string }> {
  if (file.size > largest)
    return { wrong: `“${file.name}” has more than 20 MB. Bring in a list in several parts.` };
  const bytes = await file.arrayBuffer().catch(() => null);
  if (bytes === null)
    return { wrong: `“${file.name}” cannot be read. See that it is still there, then choose it again.` };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return {
      wrong: `“${file.name}” is no text in UTF-8. Save a spreadsheet as “CSV UTF-8”, then choose the file again.`,
    };
  }
}
