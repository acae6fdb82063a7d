import { Stack, Text } from '@mantine/core';
import type { Account } from '../../../shared/contract/till/index.ts';
import { APPROVAL_WAY_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { useMoney } from '../../common/shop.tsx';
import { EventList } from '../event-list.tsx';
import type { FarField } from '../far-field.ts';
import { ApprovalForm } from './approval-form.tsx';

interface ApprovalCardProps {
  account: Account;
  unwritten: boolean;
  /** The bill is closed: approvals are read, not taken. */
  closed: boolean;
  amountField: FarField;
}

/** What the customer agreed to, and where the next approval is taken. */
export function ApprovalCard(props: ApprovalCardProps) {
  const { account, unwritten, closed, amountField } = props;
  const money = useMoney();
  const format = useFormat();
  const estimate = account.estimates.at(-1);
  return (
    <Card title="Approval">
      <Stack gap="md">
        <EventList
          label="Approvals, newest first"
          events={[
            ...account.approvals.toReversed().map((approval) => ({
              key: `${approval.at} ${approval.estimateNumber}`,
              title: `Up to ${money(approval.amount)}`,
              detail: `${approval.approvedBy}, ${APPROVAL_WAY_LABELS[approval.how].toLowerCase()}, ${approval.estimateNumber}. Taken by ${approval.takenBy}, ${format.instant(approval.at)}.`,
            })),
            ...(account.spendingLimit === null
              ? []
              : [
                  {
                    key: 'intake',
                    title: `Up to ${money(account.spendingLimit)}`,
                    detail: 'Spending limit agreed at intake.',
                  },
                ]),
          ]}
          empty="Nothing is approved yet."
        />
        {!closed && estimate !== undefined && (
          <ApprovalForm
            key={estimate.id}
            account={account}
            estimate={estimate}
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
