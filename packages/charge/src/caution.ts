import type { Hazard } from '@tiegel/elements';

/** The process adds these to the hazards of the elements. */
type ProcessKind = 'evaporates' | 'powder' | 'heat of mixing' | 'boils before all is molten';

/** What to beware of in weighing and melting, each only a reminder: `follow` says whose word holds. */
export interface Caution {
  /** symbols of the elements that it is about */
  about: string[];
  kind: Hazard['kind'] | ProcessKind;
  text: string;
  source: Hazard['source'] | 'estimate' | 'pair enthalpies';
  follow: string;
}
