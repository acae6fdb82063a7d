import { Alert, Button, Group, Stack, Text } from '@mantine/core';
import { IconFileInvoice, IconHandStop } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { useNavigate } from 'react-router';
import type { Proposal } from '../../../shared/contract/bench/index.ts';
import type { Account, BillTerms } from '../../../shared/contract/till/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { QueryView } from '../../common/page.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import { MoveDialog } from '../../counter/move-dialog.tsx';
import { useEstimateDraft } from '../../till/estimate/use-estimate-draft.ts';
import { useMoneyRules } from '../../till/lines/use-money-rules.ts';
import { WithBillTerms } from '../../till/with-bill-terms.tsx';
import classes from './decide.module.css';
import { missingFrom, withProposals } from './with-proposals.ts';

/** What follows from the decisions: lines for the estimate, or the end of the job. */
export function ProposalsCard() {
  const job = useJob();
  const proposals = useQuery(deskQuery.bench.proposals.queryOptions({ input: { jobId: job.id } }));
  const account = useQuery(deskQuery.till.account.queryOptions({ input: { jobId: job.id } }));
  return (
    <Card title="What follows for the estimate">
      <QueryView query={proposals}>
        {({ lines, moveTo }) =>
          moveTo === 'stopped' ? (
            <Stopped />
          ) : lines.length === 0 ? (
            <Text c="dimmed">
              Nothing yet: lines are proposed as soon as something is decided that costs work or
              parts.
            </Text>
          ) : (
            <QueryView query={account}>
              {(data) => (
                <WithBillTerms jobId={job.id}>
                  {(terms) => <Proposals account={data} terms={terms} lines={lines} />}
                </WithBillTerms>
              )}
            </QueryView>
          )
        }
      </QueryView>
    </Card>
  );
}

function Stopped() {
  const job = useJob();
  const [moving, setMoving] = useState(false);
  return (
    <Alert
      color="red"
      icon={<IconHandStop aria-hidden />}
      title="A stop stands: nothing is proposed"
    >
      {job.nextStates.includes('stopped') ? (
        <Stack gap="sm" align="flex-start">
          <Text>
            The job itself has not moved. Move it to ‘Stopped’ if that is what was decided, and let
            the customer know.
          </Text>
          <Button variant="default" h={48} onClick={() => setMoving(true)}>
            Move {job.code} to ‘Stopped’ …
          </Button>
        </Stack>
      ) : (
        <Text>Decide anew on that part to go on.</Text>
      )}
      {moving && <MoveDialog job={job} to="stopped" onClose={() => setMoving(false)} />}
    </Alert>
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
