import { Text } from '@mantine/core';
import type { Account, BillTerms } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import type { EstimateDraft } from '../estimate/use-estimate-draft.ts';
import { IssueForm } from './issue-form.tsx';
import { IssuedInvoice } from './issued-invoice.tsx';

export interface InvoiceCardProps {
  account: Account;
  draft: EstimateDraft;
  terms: BillTerms;
  closed: boolean;
  onIssued: () => void;
  onAskAgain: () => void;
}

/** The bills of the job, newest first, and where the next one is issued: once, never changed. */
export function InvoiceCard(props: InvoiceCardProps) {
  const { account } = props;
  return (
    <>
      {account.invoice === null && (
        <Card title="Invoice">
          {account.estimates.length === 0 || props.closed ? (
            <Text size="sm" c="dimmed">
              {props.closed
                ? 'The job was handed over without an invoice.'
                : 'There is nothing to bill from yet: write an estimate, and have it approved.'}
            </Text>
          ) : (
            <IssueForm {...props} />
          )}
        </Card>
      )}
      {account.invoices.toReversed().map((invoice) => (
        <IssuedInvoice
          key={invoice.id}
          invoice={invoice}
          creditNotes={account.creditNotes.filter(
            ({ invoiceNumber }) => invoiceNumber === invoice.number,
          )}
        />
      ))}
    </>
  );
}
