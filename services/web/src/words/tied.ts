/** A number stays with its sign and its unit: no line breaks inside '63 %', '± 45 kJ/mol' or '1 < δ < 6 %'. */
export function tied(text: string): string {
  return text
    .replace(/(\d) (?=(?:%|K|°C|kJ\/mol|J\/\(mol|MPa|R|g\/cm³)(?![A-Za-z]))/g, '$1\u00a0')
    .replace(/ ([<>≤≥]) (?=\S)/g, '\u00a0$1\u00a0')
    .replaceAll('(mol K)', '(mol\u00a0K)')
    .replace(/± (?=\d)/g, '±\u00a0');
}
