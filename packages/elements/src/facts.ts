export type { Facts } from '@tiegel/contract';
