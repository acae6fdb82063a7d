import { Alert, Button, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { z } from 'zod';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';

interface IssueRefusalProps {
  error: unknown;
  /** What the bill comes to now, and what may be billed: a refusal of before may be no news any more. */
  total: number;
  limit: number;
  sending: boolean;
  onAskAgain: () => void;
  onLetPass: () => void;
}

const OverCredit = z.object({ owed: z.int(), limit: z.int(), over: z.int() });

/** Why the invoice was not issued, and what to do next. */
export function IssueRefusal(props: IssueRefusalProps) {
  const { error, total, limit } = props;
  const money = useMoney();
  if (error === null || error === undefined) return null;
  const refusal = refusalOf(error);
  const over = total - limit;
  if (refusal.code === 'OVER_APPROVAL' && over <= 0) return null;
  if (refusal.code === 'OVER_APPROVAL')
    return (
      <>
        <RefusalAlert error={error} />
        <Alert
          color="yellow"
          icon={<IconAlertTriangle aria-hidden />}
          title={`${money(total)} against the approved ${money(limit)}: ${money(over)} too much`}
        >
          <Text size="sm" mb="xs">
            Ring the customer, read out the estimate, and take down the new amount. Or take lines
            out until the bill fits. Local law decides what may be charged without an approval.
          </Text>
          <Button variant="default" size="sm" onClick={props.onAskAgain}>
            Take another approval
          </Button>
        </Alert>
      </>
    );
  const credit = OverCredit.safeParse(refusal.data);
  if (refusal.code !== 'OVER_CREDIT_LIMIT' || !credit.success)
    return <RefusalAlert error={error} />;
  return (
    <>
      <RefusalAlert error={error} />
      <Alert
        color="yellow"
        icon={<IconAlertTriangle aria-hidden />}
        title={`${money(credit.data.owed)} owed against a limit of ${money(credit.data.limit)}`}
      >
        <Text size="sm" mb="xs">
          Ask the owner when you don’t decide this yourself. The journal keeps who let it pass.
        </Text>
        <Button variant="default" size="sm" loading={props.sending} onClick={props.onLetPass}>
          Let it pass and issue it
        </Button>
      </Alert>
    </>
  );
}
