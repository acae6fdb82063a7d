import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { JobId } from '../../../shared/contract/ids.ts';
import type { PartName } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useBy } from '../../common/station.tsx';

/** One part that is to be issued, by what was scanned. */
export interface Wanted {
  number: string;
  /** Thousandths. */
  quantity: number;
  reason: string;
  belowNothing: boolean;
}

/**
 * Issues parts one after the other, as fast as they are scanned. Other writes take the same thing sent twice
 * for a double click; here it is two parts of a kind. What is refused stays until it is settled, whatever
 * is scanned meanwhile.
 */
export function useIssue(jobId: JobId, onIssued: (part: PartName, wanted: Wanted) => void) {
  const by = useBy();
  const client = useQueryClient();
  const [refused, setRefused] = useState<{ wanted: Wanted; error: unknown } | null>(null);
  const { mutate, isPending } = useMutation({
    mutationFn: (wanted: Wanted) => deskQuery.parts.issue.call({ by, jobId, ...wanted }),
    scope: { id: `issue ${jobId}` },
    onSuccess: async ({ issued }, wanted) => {
      setRefused((before) => (before?.wanted.number === wanted.number ? null : before));
      onIssued(issued, wanted);
      await client.invalidateQueries();
    },
    onError: (error, wanted) => setRefused({ wanted, error }),
  });
  return { issue: mutate, isPending, refused, settle: () => setRefused(null) };
}
