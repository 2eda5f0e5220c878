/** Quantities that people look for together; each is in exactly one group. Ids are those of `quantities`. */
export const quantityGroups: readonly { name: string; ids: readonly string[] }[] = [
  {
    name: 'Mixing',
    ids: [
      'configurationalEntropy',
      'effectiveElements',
      'mixingEnthalpy',
      'mixingFreeEnergy',
      'omega',
      'lowestPairEnthalpy',
      'highestPairEnthalpy',
      'pairEnthalpyScatter',
    ],
  },
  {
    name: 'Atomic size',
    ids: ['sizeMismatch', 'lambda', 'gamma', 'mismatchEntropy', 'excessEntropyRatio', 'atomicVolume'],
  },
  {
    name: 'Electrons',
    ids: ['valenceElectronConcentration', 'electronegativitySpread', 'allenElectronegativitySpread'],
  },
  { name: 'Mass and cost', ids: ['density', 'meanAtomicMass', 'cost', 'costPerLitre'] },
  {
    name: 'Melting',
    ids: [
      'meltingTemperature',
      'homologousTemperature',
      'lowestElementMelting',
      'vapourMargin',
      'oxideFormers',
    ],
  },
  {
    name: 'Stiffness and strength',
    ids: [
      'shearModulus',
      'youngsModulus',
      'bulkModulus',
      'pughRatio',
      'modulusMismatch',
      'yieldStrengthFcc',
      'yieldStrengthBcc',
    ],
  },
  { name: 'Phases', ids: ['singlePhaseEstimate'] },
];
