import { Stack, Text } from '@mantine/core';
import type { Account, BillTerms } from '../../../shared/contract/till/index.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { useJob } from '../../common/job.tsx';
import { useMoney } from '../../common/shop.tsx';
import { EventList } from '../event-list.tsx';
import type { FarField } from '../far-field.ts';
import { approvalEvents } from './approval-events.ts';
import { ApprovalForm } from './approval-form.tsx';

interface ApprovalCardProps {
  account: Account;
  terms: BillTerms;
  unwritten: boolean;
  /** The bill is closed: approvals are read, not taken. */
  closed: boolean;
  amountField: FarField;
}

/** What the customer agreed to, and where the next approval is taken. */
export function ApprovalCard(props: ApprovalCardProps) {
  const { account, terms, unwritten, closed, amountField } = props;
  const job = useJob();
  const money = useMoney();
  const format = useFormat();
  const estimate = account.estimates.at(-1);
  return (
    <Card title="Approval">
      <Stack gap="md">
        <EventList
          label="Approvals, newest first"
          events={approvalEvents(account, job.intakeSigned, {
            money,
            instant: format.instant,
          })}
          empty="Nothing is approved yet."
        />
        {!closed && estimate !== undefined && (
          <ApprovalForm
            key={estimate.id}
            account={account}
            estimate={estimate}
            terms={terms}
            unwritten={unwritten}
            amountField={amountField}
          />
        )}
        {!closed && estimate === undefined && (
          <Text size="sm" c="dimmed">
            Write an estimate first; then it can be read out and approved.
          </Text>
        )}
        <Text size="xs" c="dimmed">
          The newest approval is the limit. Local law decides what counts as an approval, and what
          may be charged without one.
        </Text>
      </Stack>
    </Card>
  );
}
