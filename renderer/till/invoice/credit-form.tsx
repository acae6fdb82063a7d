import { Button, Group, Modal, Stack, Text, Textarea } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { Invoice } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { type CreditChoice, leftOf, readCredit } from './credit-choice.ts';
import { CreditLines } from './credit-lines.tsx';

interface CreditFormProps {
  invoice: Invoice;
  opened: boolean;
  onClose: () => void;
}

/** Takes lines, or parts of them, off an issued invoice. */
export function CreditForm({ invoice, opened, onClose }: CreditFormProps) {
  return (
    <Modal
      opened={opened}
      onClose={onClose}
      size="lg"
      title={`Credit note for invoice ${invoice.number}`}
    >
      <Form invoice={invoice} onDone={onClose} />
    </Modal>
  );
}

function Form({ invoice, onDone }: { invoice: Invoice; onDone: () => void }) {
  const by = useBy();
  const money = useMoney();
  const [choice, setChoice] = useState<CreditChoice>(new Map());
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const credit = useWrite(deskQuery.till.creditInvoice.mutationOptions({ onSuccess: onDone }));
  const errors = fieldErrors(credit.error);
  const reading = readCredit(invoice, choice);
  const whole = invoice.lines.flatMap((_, line) =>
    invoice.wholeLines.includes(line) ? [] : [[line, null] as const],
  );

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (!reading.ok || reason.trim() === '') return;
    credit.mutate({ by, invoiceId: invoice.id, lines: reading.lines, reason });
  };

  return (
    <form onSubmit={send} noValidate>
      <Stack gap="sm">
        <Group justify="space-between">
          <Text size="sm">What is taken off, before discount on the whole and tax:</Text>
          <Button variant="default" size="sm" onClick={() => setChoice(new Map(whole))}>
            Choose all of it
          </Button>
        </Group>
        <CreditLines
          invoice={invoice}
          choice={choice}
          left={(line) => leftOf(invoice, line)}
          onChange={setChoice}
        />
        <Textarea
          label="Reason"
          description="Stands on the credit note."
          autosize
          minRows={2}
          maxRows={5}
          maxLength={500}
          value={reason}
          error={errors.reason ?? (asked && reason.trim() === '' ? 'Say why.' : undefined)}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <div aria-live="polite">
          {reading.ok ? (
            <Text>
              {money(reading.total)} with tax.{' '}
              {reading.freed > 0
                ? `${money(reading.freed)} of it was paid: that is the customer’s again.`
                : 'All of it comes off what is still open.'}
            </Text>
          ) : (
            (asked || choice.size > 0) && <Text fw={500}>{reading.why}</Text>
          )}
        </div>
        <RefusalAlert error={credit.error} />
        <Group gap="xs" justify="flex-end">
          <Button variant="default" onClick={onDone}>
            Not now
          </Button>
          <Button type="submit" loading={credit.isPending}>
            Issue the credit note{reading.ok ? `: ${money(reading.total)}` : ''}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
