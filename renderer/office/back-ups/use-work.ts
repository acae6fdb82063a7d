import { skipToken, useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { LongWork } from '../../../shared/contract/back-ups.ts';
import type { LongWorkId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';

const SOON = 250;

/**
 * A work that goes on at the desk, asked after until it has ended. Lists on the screen are asked for anew then.
 * @param id null while there is none
 */
export function useWork(id: LongWorkId | null): { work: LongWork | undefined; error: unknown } {
  const client = useQueryClient();
  const { data, error } = useQuery(
    deskQuery.office.longWork.queryOptions({
      input: id === null ? skipToken : { id },
      refetchInterval: ({ state }) => (state.data?.state === 'running' ? SOON : false),
    }),
  );
  const [runs, setRuns] = useState(false);
  const running = data?.state === 'running';
  if (running && !runs) setRuns(true);
  const ended = runs && !running && data !== undefined;
  useEffect(() => {
    if (!ended) return;
    setRuns(false);
    void client.invalidateQueries();
  }, [ended, client]);
  return { work: id === null ? undefined : data, error };
}
