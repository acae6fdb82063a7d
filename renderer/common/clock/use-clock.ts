import { useQuery } from '@tanstack/react-query';
import type { ClockEntry } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../desk.ts';
import { useStation } from '../station.tsx';

/** Often enough that the minutes go on. */
const REFRESH = 30_000;

/** Every clock that runs in the shop; empty until it is known. */
export function useRunningClocks(): readonly ClockEntry[] {
  const query = useQuery(
    deskQuery.till.runningClocks.queryOptions({ input: {}, refetchInterval: REFRESH }),
  );
  return query.data ?? [];
}

/** The clock of whoever is at this station; null while they are on none. */
export function useMyClock(): ClockEntry | null {
  const { staff } = useStation();
  return useRunningClocks().find(({ staffId }) => staffId === staff?.id) ?? null;
}

/** The shop's kinds of work; empty for one that has a single rate. */
export function useWorkKinds(): readonly string[] {
  const query = useQuery(deskQuery.till.rules.queryOptions({ input: {} }));
  return query.data?.labourRates.map(({ name }) => name) ?? [];
}

/** What people read for a kind of work. */
export const workKindLabel = (workKind: string): string =>
  workKind === '' ? 'Other work' : workKind;
