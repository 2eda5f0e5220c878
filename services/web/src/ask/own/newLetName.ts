/** A name that none of the taken ones is: merit, merit2 and so on. */
export function newLetName(taken: readonly string[]): string {
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? 'merit' : `merit${number}`;
    if (!taken.includes(name)) return name;
  }
}
