import { Alert, Anchor, Button, CopyButton, Stack, Text } from '@mantine/core';
import { IconCopy, IconHandStop, IconListCheck, IconPlus } from '@tabler/icons-react';
import { useEffect, useRef, useState } from 'react';
import { useLocation } from 'react-router';
import type { Account, BillAhead, BillTerms } from '../../../shared/contract/till/index.ts';
import { sumInWords } from '../../../shared/work/till/at-least.ts';
import { REACH_BY_LABELS } from '../../../shared/work/vocabulary.ts';
import { useJob } from '../../common/job.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import { useStation } from '../../common/station.tsx';
import type { EstimateDraft } from '../estimate/use-estimate-draft.ts';
import { useMoneyRules } from '../lines/use-money-rules.ts';
import { BeyondList } from './beyond-list.tsx';
import classes from './limit.module.css';
import { isFirstAsking, stoppedWords, whatToSay } from './limit-words.ts';
import { OverrideForm } from './override-form.tsx';
import { useBillAhead } from './use-bill-ahead.ts';
import { missingBeyond, withBeyond } from './with-beyond.ts';
import { withTyped } from './with-typed.ts';

interface AskCustomerProps {
  account: Account;
  draft: EstimateDraft;
  terms: BillTerms;
  onTakeApproval: () => void;
}

/** What came to the bill that nobody approved, and the way to the next approval; nothing while it fits. */
export function AskCustomer(props: AskCustomerProps) {
  const { state } = useJob();
  const ahead = useBillAhead(props.account.jobId);
  // Nobody is asked to approve work that was given up.
  if (state === 'stopped') return null;
  if (ahead === undefined || (!ahead.stopped && ahead.beyond.length === 0)) return null;
  return <Ask ahead={ahead} {...props} />;
}

function Ask(props: AskCustomerProps & { ahead: BillAhead }) {
  const { account, draft, terms, onTakeApproval } = props;
  const rules = useMoneyRules();
  const ahead = withTyped(props.ahead, draft, { rules, terms });
  const money = useMoney();
  const { staff } = useStation();
  const { hash } = useLocation();
  const card = useRef<HTMLDivElement>(null);
  const [overriding, setOverriding] = useState(false);
  const { stopped, beyond, total, unpriced } = ahead;
  const alarming = stopped && !isFirstAsking(ahead);

  useEffect(() => {
    if (hash === '#ask') card.current?.focus();
  }, [hash]);

  return (
    <Alert
      ref={card}
      id="ask"
      tabIndex={-1}
      color={alarming ? 'red' : 'yellow'}
      variant="light"
      icon={stopped ? <IconHandStop aria-hidden /> : <IconListCheck aria-hidden />}
      title={
        stopped && (ahead.over > 0 || isFirstAsking(ahead))
          ? stoppedWords(ahead, money)
          : `${ahead.estimate === null ? 'With what was found' : 'With what came since the estimate'} the bill is heading to ${sumInWords(money(total), unpriced.length)}`
      }
    >
      {stopped && (
        <Text size="sm">
          Steps of the build, torque, parts and clocks wait for another approval.
        </Text>
      )}
      {beyond.length > 0 && <BeyondList ahead={ahead} />}
      <ol className={classes.steps}>
        {beyond.length > 0 && <PutIntoEstimate ahead={ahead} draft={draft} />}
        {stopped && <ReadOut ahead={ahead} account={account} />}
        {stopped && (
          <li>
            <Button size="sm" onClick={onTakeApproval}>
              Take down their answer
            </Button>
          </li>
        )}
      </ol>
      {stopped && staff?.role === 'owner' && (
        <Button variant="transparent" px={0} color="gray" onClick={() => setOverriding(true)}>
          Or let it pass without asking…
        </Button>
      )}
      {overriding && <OverrideForm ahead={ahead} onClose={() => setOverriding(false)} />}
    </Alert>
  );
}

function PutIntoEstimate({ ahead, draft }: { ahead: BillAhead; draft: EstimateDraft }) {
  const rules = useMoneyRules();
  const missing = missingBeyond(draft.lines, ahead.beyond, rules);
  return (
    <li>
      <Stack gap={6} align="flex-start">
        <Text size="sm">
          {missing.length === 0
            ? 'It is in the lines below: set what prices are wanted, and write the revision.'
            : 'Put it into the estimate, and write that as the next revision.'}
        </Text>
        {missing.length > 0 && (
          <Button
            size="sm"
            leftSection={<IconPlus size={18} aria-hidden />}
            onClick={() => draft.setLines((lines) => withBeyond(lines, ahead.beyond, rules))}
          >
            Put {missing.length} {missing.length === 1 ? 'line' : 'lines'} into the estimate
          </Button>
        )}
      </Stack>
    </li>
  );
}

function ReadOut({ ahead, account }: { ahead: BillAhead; account: Account }) {
  const money = useMoney();
  const job = useJob();
  const { name: shopName } = useShop();
  const { phone, phoneInternational, email } = job.customer;
  const options = account.estimates.at(-1)?.options ?? [];
  const words = whatToSay(ahead, { machine: job.machine, shopName, options }, money);
  return (
    <li>
      <Stack gap={6} align="flex-start">
        <Text size="sm">
          Ask <bdi>{job.customerName}</bdi>, by {REACH_BY_LABELS[job.reachBy].toLowerCase()} as they
          wished
          {phone !== '' && (
            <>
              : <Anchor href={`tel:${phoneInternational || phone}`}>{phone}</Anchor>
            </>
          )}
          {email !== '' && (
            <>
              {phone === '' ? ': ' : ', '}
              <Anchor href={`mailto:${email}`}>{email}</Anchor>
            </>
          )}
          .
        </Text>
        <CopyButton value={words}>
          {({ copied, copy }) => (
            <Button
              size="sm"
              variant="default"
              leftSection={<IconCopy size={18} aria-hidden />}
              onClick={copy}
            >
              {copied ? 'Copied' : 'Copy what to write'}
            </Button>
          )}
        </CopyButton>
        <details>
          <summary>What to say</summary>
          <Text size="sm" style={{ whiteSpace: 'pre-line' }}>
            {words}
          </Text>
        </details>
      </Stack>
    </li>
  );
}
