import type { Quantity } from '../quantity.ts';
import { allenElectronegativitySpread } from './allenElectronegativitySpread.ts';
import { configurationalEntropy } from './configurationalEntropy.ts';
import { cost } from './cost.ts';
import { costPerLitre } from './costPerLitre.ts';
import { density } from './density.ts';
import { electronegativitySpread } from './electronegativitySpread.ts';
import { lambda } from './lambda.ts';
import { meanAtomicMass } from './meanAtomicMass.ts';
import { meltingTemperature } from './meltingTemperature.ts';
import { mixingEnthalpy } from './mixingEnthalpy.ts';
import { omega } from './omega.ts';
import { sizeMismatch } from './sizeMismatch.ts';
import { valenceElectronConcentration } from './valenceElectronConcentration.ts';

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
];
