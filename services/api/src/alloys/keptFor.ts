/**
 * What follows from alloys, worked out anew only when they changed: each look at the evidence and each alloy that is
 * read asks for it, and of three thousand it takes seconds, in which nobody else is answered.
 */
export function keptFor<Alloys, Found>(workOut: (alloys: Alloys) => Found): (alloys: Alloys) => Found {
  let kept: { key: string; found: Found } | null = null;
  return (alloys) => {
    const key = JSON.stringify(alloys);
    if (kept?.key !== key) kept = { key, found: workOut(alloys) };
    return kept.found;
  };
}
