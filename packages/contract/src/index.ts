export * from './facts.ts';
export * from './outcome.ts';
export * from './plan.ts';
export * from './problem.ts';
export * from './problems.ts';
export * from './search.ts';
export * from './specification.ts';
