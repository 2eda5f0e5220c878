/** Where a card lies on the screen, in px. */
export interface Place {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export type Direction = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';

/**
 * The card that an arrow key leads to: the nearest one whose middle lies in that direction, where
 * a step aside counts four times a step ahead. Works on what is drawn, so that the wide table and
 * the turned one of small screens need no rules of their own. −1 where there is none.
 */
export function walk(places: readonly Place[], from: number, direction: Direction): number {
  const start = middle(places[from]!);
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  places.forEach((place, index) => {
    const end = middle(place);
    const [right, down] = [end.x - start.x, end.y - start.y];
    const [ahead, aside] = {
      ArrowLeft: [-right, down],
      ArrowRight: [right, down],
      ArrowUp: [-down, right],
      ArrowDown: [down, right],
    }[direction] as [number, number];
    const cost = ahead + 4 * Math.abs(aside);
    if (ahead > 1 && cost < least) [best, least] = [index, cost];
  });
  return best;
}

function middle({ left, right, top, bottom }: Place): { x: number; y: number } {
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}
