import type { AcceptedSpecification } from '../draft/draftOf.ts';

/** A search to begin with: an invented task, told in a line, and the specification that asks it. */
export interface Template {
  name: string;
  story: string;
  /** loaded when it is chosen */
  specification: () => Promise<AcceptedSpecification>;
}

/** Our own templates. The tasks are invented, like the prices; the files can be given to the terminal, too. */
export const templates: readonly Template[] = [
  {
    name: 'Cold service',
    story:
      'A valve in liquid nitrogen: face-centred by its valence electrons, as strong as can be at 77 K, at most 18 EUR/kg.',
    specification: async () =>
      (await import('./templates/cold-service.spec.json')).default as AcceptedSpecification,
  },
  {
    name: 'Hot service',
    story:
      'A holder in a furnace: body-centred, melting above 2200 K, lighter than molybdenum, as strong as can be at 1000 °C.',
    specification: async () =>
      (await import('./templates/hot-service.spec.json')).default as AcceptedSpecification,
  },
  {
    name: 'Light',
    story:
      'An arm that moves fast: at most 5 g/cm³, ranked by stiffness over density, an expression of one’s own.',
    specification: async () => (await import('./templates/light.spec.json')).default as AcceptedSpecification,
  },
];
