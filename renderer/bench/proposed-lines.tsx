import { Button, Group, Stack, Text } from '@mantine/core';
import { IconFileInvoice } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { useNavigate } from 'react-router';
import type { Proposal } from '../../shared/contract/bench/index.ts';
import type { Account, BillTerms } from '../../shared/contract/till/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { deskQuery } from '../common/desk.ts';
import { useJob } from '../common/job.tsx';
import { QueryView } from '../common/page.tsx';
import { useMoney, useShop } from '../common/shop.tsx';
import { useEstimateDraft } from '../till/estimate/use-estimate-draft.ts';
import { useMoneyRules } from '../till/lines/use-money-rules.ts';
import { WithBillTerms } from '../till/with-bill-terms.tsx';
import classes from './proposed-lines.module.css';
import { missingFrom, withProposals } from './with-proposals.ts';

/** Lines that follow from what the bench found or decided, and the way into the estimate's draft. */
export function ProposedLines({ lines }: { readonly lines: readonly Proposal[] }) {
  const job = useJob();
  const account = useQuery(deskQuery.till.account.queryOptions({ input: { jobId: job.id } }));
  return (
    <QueryView query={account}>
      {(data) => (
        <WithBillTerms jobId={job.id}>
          {(terms) => <Proposals account={data} terms={terms} lines={lines} />}
        </WithBillTerms>
      )}
    </QueryView>
  );
}

function Proposals({
  account,
  terms,
  lines,
}: {
  readonly account: Account;
  readonly terms: BillTerms;
  readonly lines: readonly Proposal[];
}) {
  const job = useJob();
  const navigate = useNavigate();
  const rules = useMoneyRules();
  const draft = useEstimateDraft(account, terms);
  const [leaving, setLeaving] = useState(false);
  const missing = missingFrom(draft.lines, lines);
  const billed = account.invoice !== null || job.state === 'handed-over';

  // The draft is kept in an effect of its own: the till is opened only once that has run.
  useEffect(() => {
    if (leaving) navigate(`/job/${job.code}/till`);
  }, [leaving, navigate, job.code]);

  const put = () => {
    draft.setLines((before) => withProposals(before, lines, rules));
    setLeaving(true);
  };
  return (
    <Stack gap="sm">
      <ProposalTable lines={lines} missing={missing} />
      {billed ? (
        <Text>The bill of this job is issued: nothing can be added to its estimate.</Text>
      ) : (
        <Group gap="sm">
          {missing.length === 0 ? (
            <Text>All of it is in the estimate already.</Text>
          ) : (
            <Button
              h={52}
              size="md"
              leftSection={<IconFileInvoice size={20} aria-hidden />}
              onClick={put}
            >
              Put {missing.length} {missing.length === 1 ? 'line' : 'lines'} into the estimate
            </Button>
          )}
          <Text size="sm" c="dimmed" flex="1 1 14rem">
            They come into the draft at the till; nothing is written before somebody writes the
            estimate there.
          </Text>
        </Group>
      )}
    </Stack>
  );
}

function ProposalTable({
  lines,
  missing,
}: {
  readonly lines: readonly Proposal[];
  readonly missing: readonly Proposal[];
}) {
  const money = useMoney();
  const { locale } = useShop();
  return (
    <table className={classes.lines}>
      <thead>
        <tr>
          <th scope="col">Line</th>
          <th scope="col" className={classes.number}>
            Quantity
          </th>
          <th scope="col" className={classes.number}>
            Price
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={`${line.kind} ${line.description}`}>
            <th scope="row">
              <Text>
                {line.partNumber !== '' && `${line.partNumber}: `}
                {line.description}
              </Text>
              <Text size="sm" c="dimmed">
                {line.note}
                {!missing.includes(line) && ' In the estimate already.'}
              </Text>
            </th>
            <td className={classes.number}>
              {formatQuantity(line.quantity, locale)} {line.unit}
            </td>
            <td className={classes.number}>
              {line.priceToSet ? 'to be set' : money(line.unitPrice)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
