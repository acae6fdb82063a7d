import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { deskQuery } from '../desk.ts';

/** Often enough that a tablet at the bench sees what the counter wrote before somebody acts on it. */
const CALM = 5_000;
const LOST = 2_500;

/**
 * Asks again and again whether the desk is there and whether anything was written. When it comes back, or
 * somebody wrote at another station, every list and page on the screen asks again.
 */
export function usePulse() {
  const client = useQueryClient();
  const pulse = useQuery(
    deskQuery.office.about.queryOptions({
      input: {},
      refetchOnWindowFocus: 'always',
      refetchInterval: (query) => (query.state.status === 'error' ? LOST : CALM),
    }),
  );
  const lost = pulse.isError;
  const written = pulse.data?.written;
  const before = useRef({ lost, written });
  useEffect(() => {
    const grown = before.current.written !== undefined && before.current.written !== written;
    // What was asked for after a write of this station's own is on its way already.
    if (grown) void client.invalidateQueries({}, { cancelRefetch: false });
    else if (before.current.lost && !lost) void client.invalidateQueries();
    before.current = { lost, written };
  }, [lost, written, client]);
  return pulse;
}
