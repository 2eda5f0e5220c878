/** What the file of a search is called: 'cobalt-free-impeller-alloy.spec.json'. */
export function fileNameOf(name: string): string {
  const plain = name
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return `${plain || 'search'}.spec.json`;
}
