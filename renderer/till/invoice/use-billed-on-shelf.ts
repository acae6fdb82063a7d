import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { JobId } from '../../../shared/contract/ids.ts';
import type { BilledPart } from '../../../shared/contract/parts/index.ts';
import type { Line } from '../../../shared/contract/till/index.ts';
import { SECURITY } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';

/** What a bill that is about to be issued names, and the shelf can still give for it. */
export function useBilledOnShelf(
  jobId: JobId,
  billed: readonly Pick<Line, 'kind' | 'partId' | 'quantity'>[],
): BilledPart[] {
  const lines = billed.flatMap(({ kind, partId, quantity }) =>
    partId === null || SECURITY.includes(kind) ? [] : [{ partId, quantity }],
  );
  const query = useQuery({
    ...deskQuery.parts.notIssuedOf.queryOptions({ input: { jobId, lines } }),
    enabled: lines.length > 0,
    placeholderData: keepPreviousData,
  });
  return lines.length === 0 ? [] : (query.data ?? []).filter(({ onShelf }) => onShelf > 0);
}
