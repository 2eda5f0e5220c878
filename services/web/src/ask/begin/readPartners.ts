/** Symbols as people list them: 'Mo, V W'. Those that are no element with data are told apart. */
export function readPartners(
  text: string,
  known: readonly string[],
): { partners: string[]; unknown: string[] } {
  const typed = [...new Set(text.split(/[\s,;]+/).filter((one) => one !== ''))];
  return {
    partners: typed.filter((one) => known.includes(one)),
    unknown: typed.filter((one) => !known.includes(one)),
  };
}
