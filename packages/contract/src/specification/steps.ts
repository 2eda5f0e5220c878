/** Steps of the grid in at.%: each divides 100 into a whole number of parts. */
export const steps = [0.1, 0.2, 0.25, 0.5, 1, 2, 2.5, 4, 5, 10, 20, 25, 50] as const;
