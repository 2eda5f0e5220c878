/** How far back 'of late' reaches, ms. */
const reach = 15_000;

/** Points a second of late, from what came back and when. */
export interface RecentRate {
  /** Notes points that came back at an instant (ms, monotonic). */
  add(points: number, now: number): void;
  /** Null until two outcomes came back. */
  perSecond(now: number): number | null;
}

export function recentRate(): RecentRate {
  let noted: { points: number; at: number }[] = [];
  return {
    add(points, now) {
      noted = [...noted.filter(({ at }) => now - at <= reach), { points, at: now }];
    },
    perSecond(now) {
      const [first, ...later] = noted;
      // What the first one brought was worked on before it came.
      const points = later.reduce((sum, one) => sum + one.points, 0);
      return first === undefined || points === 0 ? null : points / ((now - first.at) / 1000);
    },
  };
}
