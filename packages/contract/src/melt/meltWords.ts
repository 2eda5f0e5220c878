/** How a melt is made, in the words of the trade. */
export const meltProcesses = [
  'arc melting',
  'induction melting',
  'levitation melting',
  'electron-beam melting',
  'laser melting',
  'powder metallurgy',
  'other',
] as const;

/** Phases as they are reported; 'other' is one that nobody named. */
export const observablePhases = [
  'FCC',
  'BCC',
  'HCP',
  'B2',
  'L12',
  'Laves',
  'sigma',
  'mu',
  'carbide',
  'other',
] as const;
export type ObservablePhase = (typeof observablePhases)[number];

/** How phases were observed. */
export const observationMethods = [
  'X-ray diffraction',
  'electron backscatter diffraction',
  'transmission electron microscopy',
  'scanning electron microscopy',
  'light microscopy',
  'neutron diffraction',
  'other',
] as const;

/** How an anneal ended. */
export const coolings = ['furnace', 'air', 'oil quench', 'water quench', 'other'] as const;
