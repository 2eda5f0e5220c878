/** A number stays with its sign and its unit: no line breaks inside '63 %', '± 45 kJ/mol' or 'δ < 6.6 %'. */
export function tied(text: string): string {
  return text
    .replace(/(\d) (?=(?:%|K|°C|kJ\/mol|J\/\(mol|MPa|R|g\/cm³)(?![A-Za-z]))/g, '$1\u00a0')
    .replace(/([<>≤≥=]) (?=−?\d)/g, '$1\u00a0')
    .replace(/(\p{L}) (?=[<>≤≥]\u00a0)/gu, '$1\u00a0')
    .replaceAll('(mol K)', '(mol\u00a0K)')
    .replace(/± (?=\d)/g, '±\u00a0');
}
