/** Waits for work, but no longer than `ms`: for partners that may never answer. Errors of the work are its own affair. */
export async function within(ms: number, work: Promise<unknown>): Promise<void> {
  const { promise: over, resolve } = Promise.withResolvers<void>();
  const timer = setTimeout(resolve, ms);
  await Promise.race([
    work.then(
      () => {},
      () => {},
    ),
    over,
  ]);
  clearTimeout(timer);
}
