export * from './searches.ts';
