import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import type { JobId } from '../../shared/contract/ids.ts';
import type { BillTerms } from '../../shared/contract/till/index.ts';
import { deskQuery } from '../common/desk.ts';
import { QueryView } from '../common/page.tsx';

interface WithBillTermsProps {
  jobId: JobId;
  children: (terms: BillTerms) => ReactNode;
}

/** The terms on which a job is billed today; the shop's rates, from which a draft begins, are here too then. */
export function WithBillTerms({ jobId, children }: WithBillTermsProps) {
  const terms = useQuery(deskQuery.till.terms.queryOptions({ input: { jobId } }));
  const rules = useQuery(deskQuery.till.rules.queryOptions({ input: {} }));
  return (
    <QueryView query={rules}>{() => <QueryView query={terms}>{children}</QueryView>}</QueryView>
  );
}
