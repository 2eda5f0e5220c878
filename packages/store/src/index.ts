export { openStore, type Store, type StoreOptions } from './openStore.ts';
