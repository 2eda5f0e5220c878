import type { Quantity } from '../definition/quantity.ts';
import { allenElectronegativitySpread } from './allenElectronegativitySpread.ts';
import { atomicVolume } from './atomicVolume.ts';
import { bulkModulus } from './bulkModulus.ts';
import { configurationalEntropy } from './configurationalEntropy.ts';
import { cost } from './cost.ts';
import { costPerLitre } from './costPerLitre.ts';
import { density } from './density.ts';
import { effectiveElements } from './effectiveElements.ts';
import { electronegativitySpread } from './electronegativitySpread.ts';
import { excessEntropyRatio } from './excessEntropyRatio.ts';
import { gamma } from './gamma.ts';
import { highestPairEnthalpy } from './highestPairEnthalpy.ts';
import { homologousTemperature } from './homologousTemperature.ts';
import { lambda } from './lambda.ts';
import { lowestElementMelting } from './lowestElementMelting.ts';
import { lowestPairEnthalpy } from './lowestPairEnthalpy.ts';
import { meanAtomicMass } from './meanAtomicMass.ts';
import { meltingTemperature } from './meltingTemperature.ts';
import { mismatchEntropy } from './mismatchEntropy.ts';
import { mixingEnthalpy } from './mixingEnthalpy.ts';
import { mixingFreeEnergy } from './mixingFreeEnergy.ts';
import { modulusMismatch } from './modulusMismatch.ts';
import { omega } from './omega.ts';
import { oxideFormers } from './oxideFormers.ts';
import { pairEnthalpyScatter } from './pairEnthalpyScatter.ts';
import { pughRatio } from './pughRatio.ts';
import { shearModulus } from './shearModulus.ts';
import { singlePhaseEstimate } from './singlePhaseEstimate.ts';
import { sizeMismatch } from './sizeMismatch.ts';
import { valenceElectronConcentration } from './valenceElectronConcentration.ts';
import { vapourMargin } from './vapourMargin.ts';
import { yieldStrengthBcc } from './yieldStrengthBcc.ts';
import { yieldStrengthFcc } from './yieldStrengthFcc.ts';
import { youngsModulus } from './youngsModulus.ts';

/** Every quantity, in the order in which pages and exports show them. */
export const quantities: readonly Quantity[] = [
  configurationalEntropy,
  mixingEnthalpy,
  sizeMismatch,
  meltingTemperature,
  omega,
  valenceElectronConcentration,
  electronegativitySpread,
  allenElectronegativitySpread,
  lambda,
  density,
  cost,
  costPerLitre,
  meanAtomicMass,
  effectiveElements,
  mixingFreeEnergy,
  lowestPairEnthalpy,
  highestPairEnthalpy,
  pairEnthalpyScatter,
  gamma,
  mismatchEntropy,
  excessEntropyRatio,
  atomicVolume,
  shearModulus,
  youngsModulus,
  bulkModulus,
  modulusMismatch,
  pughRatio,
  oxideFormers,
  lowestElementMelting,
  vapourMargin,
  homologousTemperature,
  yieldStrengthFcc,
  yieldStrengthBcc,
  singlePhaseEstimate,
];
