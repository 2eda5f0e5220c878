/** Goes through all steps of a work, for whoever has nothing else to do meanwhile; what it gives in the end. */
export function atOnce<Found>(steps: Generator<unknown, Found>): Found {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
