const longestShown = 200;

/** The path of an address, without its query, as a sentence names it. */
export function pathOf(url: string): string {
  return url.split('?', 1)[0]!.slice(0, longestShown);
}
