import type { QueryClient } from '@tanstack/react-query';

/** Fetches anew what melts are read in: their list first, then the evidence, and what is told of alloys near them. */
export async function refreshMelts(client: QueryClient): Promise<void> {
  await client.invalidateQueries({ queryKey: ['melts'] });
  for (const key of ['evidence', 'explanation']) void client.invalidateQueries({ queryKey: [key] });
}
