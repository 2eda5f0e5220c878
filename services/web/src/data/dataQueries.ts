import { queryOptions } from '@tanstack/react-query';
import { request } from '../server/request.ts';
import type { OwnColumnView } from './dataTypes.ts';

export const columnsQuery = queryOptions({
  queryKey: ['columns'],
  queryFn: ({ signal }) => request<OwnColumnView[]>('/columns', { signal }),
});
