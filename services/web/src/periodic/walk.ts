/** Where a card lies on the screen, in px. */
export interface Place {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export type Direction = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';

/**
 * The card that an arrow key leads to: the nearest one straight ahead, over any gap. Works on
 * what is drawn, so that the wide table and the turned one of small screens need no rules of
 * their own. −1 where there is none.
 */
export function walk(places: readonly Place[], from: number, direction: Direction): number {
  const start = places[from]!;
  const sideways = direction === 'ArrowLeft' || direction === 'ArrowRight';
  const forwards = direction === 'ArrowRight' || direction === 'ArrowDown';
  const along = (place: Place) => (sideways ? place.left : place.top) * (forwards ? 1 : -1);
  const inLine = (place: Place) =>
    sideways
      ? place.top < start.bottom && place.bottom > start.top
      : place.left < start.right && place.right > start.left;
  const ahead = places
    .map((place, index) => ({ index, place, distance: along(place) - along(start) }))
    .filter(({ place, distance }) => distance > 0 && inLine(place));
  return ahead.sort((a, b) => a.distance - b.distance)[0]?.index ?? -1;
}
