export * from './expression.ts';
export * from './program.ts';
export * from './quantity.ts';
