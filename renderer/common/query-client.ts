import { ORPCError } from '@orpc/client';
import { focusManager, MutationCache, QueryCache, QueryClient } from '@tanstack/react-query';
import { deskQuery } from './desk.ts';

/** A refusal stays the same however often one asks; a lost connection may come back. */
const mayComeBack = (error: unknown): boolean => !(error instanceof ORPCError);

/** A window that is brought to the front asks at once what was written meanwhile, hidden before or only behind. */
function askAtFront(): void {
  focusManager.setEventListener((onFocus) => {
    const look = () => document.visibilityState === 'visible' && onFocus();
    window.addEventListener('focus', look);
    document.addEventListener('visibilitychange', look);
    return () => {
      window.removeEventListener('focus', look);
      document.removeEventListener('visibilitychange', look);
    };
  });
}

export function makeQueryClient(): QueryClient {
  askAtFront();
  const pulse = deskQuery.office.about.key();
  // When a call finds nobody at the other end, the frame's own question finds out at once.
  const askForPulse = (error: unknown, kind: unknown): void => {
    if (!mayComeBack(error) || JSON.stringify(kind) === JSON.stringify(pulse[0])) return;
    void client.invalidateQueries({ queryKey: pulse });
  };
  const client: QueryClient = new QueryClient({
    queryCache: new QueryCache({
      onError: (error, query) => askForPulse(error, query.queryKey[0]),
    }),
    mutationCache: new MutationCache({
      onError: (error) => {
        askForPulse(error, null);
        // Whoever is at this station left the staff list: the frame asks who is here.
        if (error instanceof ORPCError && error.code === 'STAFF_UNKNOWN')
          void client.invalidateQueries({ queryKey: deskQuery.office.staff.key() });
      },
    }),
    defaultOptions: {
      queries: {
        // The desk is on this machine: whether there is an internet says nothing.
        networkMode: 'always',
        retry: (count, error) => count < 1 && mayComeBack(error),
        retryDelay: 300,
        staleTime: 2_000,
      },
      mutations: { networkMode: 'always', retry: false },
    },
  });
  return client;
}
