import { z } from 'zod';

/** The header by which a request that is sent again, because its answer was lost, is known. */
export function idempotencyHeader(description: string) {
  return z.object({ 'idempotency-key': z.string().min(1).max(255).optional().describe(description) });
}
