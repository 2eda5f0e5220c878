/** A search as its scoring threads know it: the plan's JSON, the flag that stops them and the key that they share, all in shared memory. */
export interface CarriedSearch {
  readonly id: string;
  readonly plan: Uint8Array<SharedArrayBuffer>;
  readonly stop: Int32Array<SharedArrayBuffer>;
  readonly sharedKey: Float64Array<SharedArrayBuffer>;
}

/** Copies a plan's JSON (UTF-8) into memory that every thread reads: handing it over again costs nothing. */
export function carriedSearch(id: string, planJson: Uint8Array): CarriedSearch {
  const plan = new Uint8Array(new SharedArrayBuffer(planJson.byteLength));
  plan.set(planJson);
  const stop = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
  const sharedKey = new Float64Array(new SharedArrayBuffer(Float64Array.BYTES_PER_ELEMENT));
  sharedKey[0] = Number.POSITIVE_INFINITY;
  return { id, plan, stop, sharedKey };
}

/** Tells every thread that scores this search to leave its chunk. */
export function stopScoring(search: CarriedSearch): void {
  Atomics.store(search.stop, 0, 1);
}
