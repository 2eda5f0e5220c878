import { ownRecalibrationSteps } from '@tiegel/insight';
import { keptFor } from './keptFor.ts';

/** The recalibration on melts of one's own. */
export const keptRecalibration = keptFor(ownRecalibrationSteps);
