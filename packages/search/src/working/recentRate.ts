/** How far back 'of late' reaches, ms. */
const reach = 15_000;

/** Points a second of late, from what came back and when. */
export interface RecentRate {
  /** Notes points that came back at an instant (ms, monotonic). */
  add(points: number, now: number): void;
  /** Null until two outcomes came back. Of what comes back more rarely than that, the last two count. */
  perSecond(now: number): number | null;
}

export function recentRate(): RecentRate {
  let noted: { points: number; at: number }[] = [];
  return {
    add(points, now) {
      const newest = noted.at(-1);
      noted = [...noted.filter((one) => one === newest || now - one.at <= reach), { points, at: now }];
    },
    perSecond(now) {
      const [first, ...later] = noted;
      // What the first one brought was worked on before it came.
      const points = later.reduce((sum, one) => sum + one.points, 0);
      return first === undefined || points === 0 ? null : points / ((now - first.at) / 1000);
    },
  };
}
