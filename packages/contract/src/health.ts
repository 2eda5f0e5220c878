import { z } from 'zod';

/** That the service runs, and who may use it. */
export const healthSchema = z.object({
  status: z.literal('running'),
  version: z.string().describe('Of the program, for reports of faults'),
  openNetwork: z.boolean().describe('Anyone who reaches the address may use the service'),
  uptimeSeconds: z.number(),
});
export type HealthView = z.infer<typeof healthSchema>;
