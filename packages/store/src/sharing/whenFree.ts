import Database from 'better-sqlite3';

const pause = new Int32Array(new SharedArrayBuffer(4));

/**
 * Does what may find the database locked by another process, again as long as it is, every
 * millisecond or two. SQLite's own waiting looks every 100 ms in the end: between two processes that
 * write one thing after another, one got no turn for seconds. What is done must be one transaction
 * or one statement, of which nothing has happened where the lock was not free.
 * @param patienceMs after which SQLite's error is thrown
 */
export function whenFree<Result>(act: () => Result, patienceMs: number): Result {
  const deadline = performance.now() + patienceMs;
  for (;;) {
    try {
      return act();
    } catch (error) {
      const busy = error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY');
      if (!busy || performance.now() > deadline) throw error;
      // Not in step with the other.
      Atomics.wait(pause, 0, 0, 1 + Math.random());
    }
  }
}
