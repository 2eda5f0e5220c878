import type { Query, QueryCache } from '@tanstack/react-query';
import { NoAnswer } from './request.ts';

/**
 * Lets a question that had no answer stay so while it is asked again. The cache would call it pending each time: every
 * few seconds the page would jump, and a screen reader would say again that the server does not answer.
 */
export function keepUnanswered(cache: QueryCache): void {
  const unanswered = new WeakMap<Query, NoAnswer>();
  cache.subscribe((event) => {
    if (event.type !== 'updated') return;
    const { query, action } = event;
    if (action.type === 'error' && action.error instanceof NoAnswer) unanswered.set(query, action.error);
    else if (action.type === 'error' || action.type === 'success') unanswered.delete(query);
    const error = unanswered.get(query);
    if (action.type === 'fetch' && error !== undefined && query.state.data === undefined)
      query.setState({ status: 'error', error });
  });
}
