import { Box, SimpleGrid, Stack, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { Account, BillTerms, LineInput } from '../../shared/contract/till/index.ts';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { useJob } from '../common/job.tsx';
import { Page, QueryView } from '../common/page.tsx';
import { ApprovalCard } from './approval/approval-card.tsx';
import { BillLines } from './estimate/bill-lines.tsx';
import { EarlierRevisions } from './estimate/earlier-revisions.tsx';
import { EstimateEditor } from './estimate/estimate-editor.tsx';
import { TotalsList } from './estimate/totals.tsx';
import { useEstimateDraft } from './estimate/use-estimate-draft.ts';
import { useFarField } from './far-field.ts';
import { TimeCard } from './hours/time-card.tsx';
import { InvoiceCard } from './invoice/invoice-card.tsx';
import { AskCustomer } from './limit/ask-customer.tsx';
import { type TakenInstead, takeLines } from './lines/take-lines.ts';
import { useMoneyRules } from './lines/use-money-rules.ts';
import { PaymentsCard } from './payments/payments-card.tsx';
import { Standing } from './standing.tsx';
import { StorageCard } from './storage/storage-card.tsx';
import { useWantedField } from './use-wanted-field.ts';
import { WarrantyCard } from './warranty/warranty-card.tsx';
import { WithBillTerms } from './with-bill-terms.tsx';

/** The money side of a job: estimate, approval, invoice, payments. */
export function TillPage() {
  const job = useJob();
  const query = useQuery(deskQuery.till.account.queryOptions({ input: { jobId: job.id } }));
  return (
    <Page title="Till">
      <WithBillTerms jobId={job.id}>
        {(terms) => (
          <QueryView query={query}>
            {(account) => <Till account={account} terms={terms} />}
          </QueryView>
        )}
      </WithBillTerms>
    </Page>
  );
}

function Till({ account, terms }: { account: Account; terms: BillTerms }) {
  const job = useJob();
  const draft = useEstimateDraft(account, terms);
  const rules = useMoneyRules();
  const approvalAmount = useFarField();
  const { invoice, estimates } = account;
  const handedOver = job.state === 'handed-over';
  const closed = handedOver || invoice !== null;

  const { page, paymentAmount, expectPayment } = useWantedField(account, closed);

  const approval = (
    <ApprovalCard
      account={account}
      terms={terms}
      unwritten={draft.changed}
      closed={closed}
      amountField={approvalAmount}
    />
  );
  const bill = (
    <InvoiceCard
      account={account}
      draft={draft}
      terms={terms}
      closed={closed}
      onIssued={expectPayment}
      onAskAgain={approvalAmount.focus}
    />
  );
  const payments = <PaymentsCard account={account} amountField={paymentAmount} />;
  const onTake = closed
    ? null
    : (taken: readonly LineInput[], instead?: TakenInstead) =>
        draft.setLines((lines) => takeLines(lines, taken, rules, instead));
  const besides = (
    <>
      <StorageCard onTake={onTake} />
      <TimeCard onTake={onTake} />
      <WarrantyCard account={account} draft={draft} closed={closed} onIssued={expectPayment} />
    </>
  );

  return (
    <Stack gap="md" ref={page}>
      <Standing account={account} draft={draft} />
      {handedOver && (
        <Text>The job was handed over; its bill is closed. Open a new job for further work.</Text>
      )}
      {closed ? (
        <>
          <SimpleGrid cols={{ base: 1, md: 2 }} spacing="md" style={{ alignItems: 'start' }}>
            {payments}
            <Stack gap="md">
              {bill}
              {approval}
              {besides}
            </Stack>
          </SimpleGrid>
          {invoice !== null && (
            <Card title="What was billed">
              <BillLines lines={invoice.lines} caption={`Lines of invoice ${invoice.number}`} />
              <Box mt="md">
                <TotalsList totals={invoice.totals} />
              </Box>
            </Card>
          )}
          <EarlierRevisions title="Estimates" estimates={estimates} />
        </>
      ) : (
        <>
          <AskCustomer
            account={account}
            draft={draft}
            terms={terms}
            onTakeApproval={approvalAmount.focus}
          />
          <EstimateEditor account={account} draft={draft} />
          <SimpleGrid cols={{ base: 1, md: 2 }} spacing="md" style={{ alignItems: 'start' }}>
            {approval}
            <Stack gap="md">
              {bill}
              {payments}
              {besides}
            </Stack>
          </SimpleGrid>
          <EarlierRevisions title="Earlier revisions" estimates={estimates.slice(0, -1)} />
        </>
      )}
    </Stack>
  );
}
