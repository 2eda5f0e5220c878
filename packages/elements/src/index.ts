export * from './facts.ts';
export * from './priceList.ts';
