import { z } from 'zod';
import { recalibrationSchema } from '../alloy/recalibration.ts';
import { criterionRecordSchema } from './criterionRecord.ts';
import { ownEvidenceSchema } from './ownEvidence.ts';
import { phaseRecordSchema } from './phaseRecord.ts';
import { strengthRecordSchema } from './strengthRecord.ts';

/** How often rules, phase estimate and strengths were right. */
export const evidenceSchema = z
  .object({
    broughtIn: ownEvidenceSchema
      .nullable()
      .describe(
        'The same on alloys that were brought in with phases (`melts` counts them); never trained on; null: none',
      ),
    own: ownEvidenceSchema
      .nullable()
      .describe('The same on the melts of your own; null where none has observed phases'),
    recalibration: z
      .object({ ...recalibrationSchema.shape, words: z.string() })
      .describe('What your own melts make of the phase estimate, or how many are missing'),
    criteria: z.array(criterionRecordSchema),
    phaseEstimate: phaseRecordSchema,
    strength: z.array(strengthRecordSchema),
  })
  .meta({ id: 'Evidence' });
export type Evidence = z.infer<typeof evidenceSchema>;
