import { type RefObject, useEffect, useRef } from 'react';

/**
 * Brings what appears into sight: a notice that follows a press may begin below the screen, and nobody scrolls
 * for what they do not expect. Focus stays where it was; what is in sight already does not move.
 * @param shown what appears, null while there is nothing; another one is brought into sight again
 */
export function useInSight<Place extends HTMLElement>(shown: object | null): RefObject<Place | null> {
  const place = useRef<Place>(null);
  useEffect(() => {
    if (shown !== null) place.current?.scrollIntoView({ block: 'nearest' });
  }, [shown]);
  return place;
}
