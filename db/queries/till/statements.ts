import { desc, eq } from 'drizzle-orm';
import type { Statement } from '../../../shared/contract/till/index.ts';
import { customerStatement } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { paperCard } from '../office.ts';

/** What was issued to a customer so far, the newest first. */
export const statementsOf = (store: ReadStore, customerId: string): Statement[] =>
  store
    .select()
    .from(customerStatement)
    .where(eq(customerStatement.customerId, customerId))
    .orderBy(desc(customerStatement.paperId))
    .all()
    .flatMap(({ paperId, from, to, closing }) => {
      const paper = paperCard(store, paperId);
      return paper === undefined ? [] : [{ paper, from, to, closing }];
    });
