import type { Paragraph, Told } from './paragraph.ts';

const noData = 'Not computed, for want of data of an element or of a pair.';

/** Which elements would share a sublattice, and up to which temperature. */
export function orderingParagraph({ dossier: { ordering }, pairSources }: Told): Paragraph {
  return {
    ...{ subject: 'ordering', heading: 'Order' },
    text: ordering?.words ?? noData,
    trust: ordering?.trust ?? null,
    sources: [
      'Mean field: Bragg & Williams, Proc. R. Soc. A 145, 699 (1934), from memory',
      ...pairSources.all,
    ],
  };
}

/** Which elements would leave which: an explanation, which its trust says. */
export function demixingParagraph({ dossier: { demixing }, pairSources }: Told): Paragraph {
  return {
    ...{ subject: 'demixing', heading: 'Demixing, as an explanation' },
    text: demixing?.words ?? noData,
    trust: demixing?.trust ?? null,
    sources: ['Regular solution, definition', ...pairSources.all],
  };
}

/** Which compounds compete with the solution at the anneal temperature. */
export function compoundParagraph({ dossier: { compounds }, pairSources }: Told): Paragraph {
  return {
    ...{ subject: 'compounds', heading: 'Compounds' },
    text: compounds?.words ?? noData,
    trust: compounds?.trust ?? null,
    // The solution is weighed against the compounds by its mixing enthalpy.
    sources: [
      'Miedema’s model: de Boer et al., Cohesion in Metals (North-Holland, 1988), from memory',
      ...pairSources.all,
    ],
  };
}

/** Which pairs seek and which avoid each other; null for a pure element. */
export function pairParagraph({ affinity, pairSources }: Told): Paragraph | null {
  if (affinity !== null && affinity.pairs.length === 0) return null;
  return {
    ...{ subject: 'pairs', heading: 'Neighbours' },
    text: affinity?.words ?? noData,
    trust: affinity?.trust ?? null,
    sources: [
      'Parameters: Cowley, Phys. Rev. 77, 669 (1950); first order in 1/T: ours, no source',
      ...pairSources.all,
    ],
  };
}
