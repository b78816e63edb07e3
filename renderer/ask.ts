/** Everything that the screens ask of the store, as queries with keys of their own. */
import { createTanstackQueryUtils } from '@orpc/tanstack-query';
import { QueryClient } from '@tanstack/react-query';
import { client } from './door.ts';

export const ask = createTanstackQueryUtils(client);

/** The store is on this computer: no network state may hold a question back, and an answer is cheap to ask for again. */
export const queries = new QueryClient({
  defaultOptions: { queries: { networkMode: 'always', retry: false, staleTime: 30_000, refetchOnWindowFocus: true } },
});
