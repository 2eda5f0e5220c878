import { type ComponentType, lazy } from 'react';
import { NoAnswer } from '../server/request.ts';

/** A page whose code is fetched when somebody opens it: a page of plots costs the first page nothing. */
export function lazyPage(load: () => Promise<ComponentType>): ComponentType {
  return lazy(async () => {
    const component = await load().catch((error: unknown) => {
      throw new NoAnswer(error);
    });
    return { default: component };
  });
}
