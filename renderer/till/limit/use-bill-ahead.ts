import { useQuery } from '@tanstack/react-query';
import type { JobId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';

/** What a job's bill is heading to; undefined until the desk has said. */
export const useBillAhead = (jobId: JobId) =>
  useQuery(deskQuery.till.billAhead.queryOptions({ input: { jobId } })).data;
