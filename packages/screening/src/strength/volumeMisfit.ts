import { divide, linear, squareRoot, times, variance } from '../formula/expression.ts';
import { molarVolume } from '../formula/molarVolume.ts';

const meanVolume = linear(molarVolume);

/** The square of the volume misfit, Σ cᵢ (Vᵢ/V − 1)², no unit; V = Σ cᵢVᵢ, molar volumes of the elements alone. */
export const squaredVolumeMisfit = divide(variance(molarVolume), times(meanVolume, meanVolume));

/** The volume misfit √(Σ cᵢ (Vᵢ/V − 1)²), a ratio: 0.08 is 8 %. */
export const volumeMisfit = squareRoot(squaredVolumeMisfit);
