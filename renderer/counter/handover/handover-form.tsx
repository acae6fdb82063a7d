import { Alert, Button, Group, Kbd, Stack, Text, Textarea, TextInput } from '@mantine/core';
import {
  IconAlertTriangle,
  IconCircleCheck,
  IconClipboardText,
  IconKey,
} from '@tabler/icons-react';
import { useEffect, useRef } from 'react';
import type { JobDossier, LeavingWords } from '../../../shared/contract/counter/index.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import type { HandoverMatter } from '../../../shared/work/counter/handover-matters.ts';
import { Card } from '../../common/card.tsx';
import { DateField } from '../../common/date-field.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney, useShop } from '../../common/shop.tsx';
import { useStation } from '../../common/station.tsx';
import { CautionNote } from '../take-in/caution-note.tsx';
import { enterMovesOn } from '../take-in/move-on.ts';
import { Signing } from '../take-in/signing.tsx';
import { billedWork } from './billed-work.ts';
import classes from './handover.module.css';
import { IssueBilled, MarkReady } from './matter-actions.tsx';
import { MattersList } from './matters-list.tsx';
import { NotSettled } from './not-settled.tsx';
import { owedNow } from './owed-now.ts';
import { useHandOver } from './use-hand-over.ts';

interface HandoverFormProps {
  job: JobDossier;
  account: Account;
  matters: readonly HandoverMatter[];
  leaving: LeavingWords;
}

export function HandoverForm({ job, account, matters, leaving }: HandoverFormProps) {
  const form = useRef<HTMLFormElement>(null);
  const money = useMoney();
  const handover = useHandOver({ job, account, matters, form });
  const { draft, change, faults } = handover;
  const { staff } = useStation();
  const { warranty } = useShop();
  const billed = billedWork(account.invoice?.lines ?? account.estimates.at(-1)?.lines ?? []);
  const start = useRef<HTMLTextAreaElement>(null);
  useEffect(() => start.current?.focus(), []);

  return (
    <form
      ref={form}
      noValidate
      aria-label="Handover"
      onKeyDownCapture={(event) => {
        if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
        event.preventDefault();
        event.stopPropagation();
        handover.start();
      }}
      onKeyDown={enterMovesOn}
      onSubmit={(event) => {
        event.preventDefault();
        handover.start();
      }}
    >
      <Stack gap="md">
        {leaving.doNotRun !== '' && (
          <Alert
            color="red"
            variant="light"
            icon={<IconAlertTriangle aria-hidden />}
            title="DO NOT RUN"
          >
            {leaving.doNotRun}. It is printed on the work order, and on the tag.
          </Alert>
        )}
        <Card title="Before it goes out">
          <MattersList
            matters={matters}
            faults={faults}
            reasons={draft.reasons}
            onReason={(matter, reason) =>
              change({ reasons: { ...draft.reasons, [matter]: reason } })
            }
            actions={{
              state: job.nextStates.includes('ready') ? <MarkReady job={job} /> : undefined,
              'parts-billed': <IssueBilled jobId={job.id} />,
            }}
          />
        </Card>
        <div className={classes.columns}>
          <Card title="What the work order says">
            <Stack gap="xs">
              <Textarea
                ref={start}
                label="What was done"
                data-field="workDone"
                required
                autosize
                minRows={4}
                maxRows={12}
                maxLength={4000}
                value={draft.workDone}
                onChange={(event) => change({ workDone: event.currentTarget.value })}
                error={faults.workDone}
              />
              {draft.workDone.trim() === '' && billed !== '' && (
                <div>
                  <Button
                    variant="default"
                    size="compact-sm"
                    leftSection={<IconClipboardText size={16} aria-hidden />}
                    onClick={() => {
                      change({ workDone: billed });
                      start.current?.focus();
                    }}
                  >
                    Begin with what was billed
                  </Button>
                </div>
              )}
              <Group grow gap="xs" align="flex-start">
                <TextInput
                  label="Old parts"
                  data-field="oldParts"
                  placeholder="returned, scrapped"
                  maxLength={300}
                  value={draft.oldParts}
                  onChange={(event) => change({ oldParts: event.currentTarget.value })}
                  error={faults.oldParts}
                  autoComplete="off"
                />
                <DateField
                  label="Next service"
                  data-field="nextServiceOn"
                  value={draft.nextServiceOn}
                  onChange={(nextServiceOn) => change({ nextServiceOn })}
                  error={faults.nextServiceOn}
                />
              </Group>
              {owedNow(account) > 0 && (
                <TextInput
                  label={`Why it goes out with ${money(account.due)} owing`}
                  data-field="owingReason"
                  description="Leave it empty when the payment is taken first."
                  maxLength={500}
                  value={draft.owingReason}
                  onChange={(event) => change({ owingReason: event.currentTarget.value })}
                  error={faults.owingReason}
                  autoComplete="off"
                />
              )}
              {job.leftWith.length > 0 && (
                <Text size="sm">
                  <IconKey size={16} aria-hidden style={{ verticalAlign: '-3px' }} /> Give back what
                  was left with it: {job.leftWith.join(', ')}.
                </Text>
              )}
              {warranty !== '' && <Text size="sm">Warranty: {warranty}</Text>}
            </Stack>
          </Card>
          <Stack gap="md">
            <CautionNote title="Say these, they are on the paper" cautions={leaving.cautions} />
            {leaving.advice.length > 0 && (
              <Card title="Running in and care">
                <Stack component="ul" gap={2} m={0} pl="md">
                  {leaving.advice.map((advice) => (
                    <Text component="li" size="sm" key={advice}>
                      {advice}
                    </Text>
                  ))}
                </Stack>
              </Card>
            )}
          </Stack>
        </div>
        <Card title="Signatures">
          <div className={classes.columns}>
            <Signing
              label="The customer"
              field="customerSignature"
              value={draft.customerSignature}
              onChange={(customerSignature) => change({ customerSignature })}
              suggestedName={job.customerName}
              error={faults.customerSignature}
            />
            <Signing
              label="The shop"
              field="shopSignature"
              value={draft.shopSignature}
              onChange={(shopSignature) => change({ shopSignature })}
              suggestedName={staff?.name ?? ''}
              error={faults.shopSignature}
            />
          </div>
          {handover.lapsed && (
            <Text role="status" size="sm" mt="xs">
              What was signed for has changed since: both sign once more.
            </Text>
          )}
        </Card>
        <NotSettled matters={matters} faults={faults} />
        <RefusalAlert error={handover.error} />
        <Group gap="sm">
          <Button
            type="submit"
            size="md"
            loading={handover.busy}
            leftSection={<IconCircleCheck size={20} aria-hidden />}
          >
            Hand over
          </Button>
          <Text size="sm" component="span">
            <Kbd>Ctrl</Kbd> + <Kbd>Enter</Kbd>
          </Text>
        </Group>
      </Stack>
    </form>
  );
}
