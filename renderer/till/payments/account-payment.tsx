import { Button, Group, Modal, Stack, Table } from '@mantine/core';
import { IconCash } from '@tabler/icons-react';
import { type FormEvent, useState } from 'react';
import type { CustomerId } from '../../../shared/contract/ids.ts';
import type { CustomerMoney } from '../../../shared/contract/till/index.ts';
import { PAYMENT_METHOD_LABELS } from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from '../estimate/bill-lines.module.css';
import { useFarField } from '../far-field.ts';
import { handed, MoneyFields, type MoneyHanded, readHanded } from './money-fields.tsx';

interface AccountPaymentProps {
  customerId: CustomerId;
  customerMoney: CustomerMoney;
  opened: boolean;
  onClose: () => void;
  onTaken: (words: string) => void;
}

/** One sum for every open invoice of a customer, the oldest first. */
export function AccountPayment({ opened, onClose, ...form }: AccountPaymentProps) {
  return (
    <Modal opened={opened} onClose={onClose} size="lg" title="One payment for all open invoices">
      <Form {...form} onClose={onClose} />
    </Modal>
  );
}

function Form({
  customerId,
  customerMoney: { open, owed },
  onClose,
  onTaken,
}: Omit<AccountPaymentProps, 'opened'>) {
  const by = useBy();
  const money = useMoney();
  const format = useFormat();
  const amountField = useFarField();
  const [value, setValue] = useState<MoneyHanded>(handed(owed));
  const [asked, setAsked] = useState(false);
  const reading = readHanded(value, owed);
  const take = useWrite(
    deskQuery.till.takeAccountPayment.mutationOptions({
      onSuccess: ({ receipt }) =>
        onTaken(
          `Payment of ${money(receipt.amount)}, ${PAYMENT_METHOD_LABELS[value.method].toLowerCase()}, receipt ${receipt.number}.${receipt.change > 0 ? ` Change: ${money(receipt.change)}.` : ''}`,
        ),
    }),
  );
  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (reading !== null) take.mutate({ by, customerId, ...reading });
  };
  return (
    <form onSubmit={send} noValidate aria-label="Take one payment for all">
      <Stack gap="sm">
        <Table verticalSpacing={4} className={classes.lines}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Invoice</Table.Th>
              <Table.Th>Job</Table.Th>
              <Table.Th>Issued</Table.Th>
              <Table.Th>Due</Table.Th>
              <Table.Th className={classes.figure}>Open</Table.Th>
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {open.map((each) => (
              <Table.Tr key={each.id}>
                <Table.Td>{each.number}</Table.Td>
                <Table.Td>{each.jobCode}</Table.Td>
                <Table.Td>{format.instant(each.issuedAt)}</Table.Td>
                <Table.Td>{each.dueOn === null ? 'at once' : format.date(each.dueOn)}</Table.Td>
                <Table.Td className={classes.amount}>{money(each.open)}</Table.Td>
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
        <MoneyFields
          value={value}
          onChange={setValue}
          label="Amount, the oldest invoice first"
          due={owed}
          asked={asked}
          amountField={amountField}
        />
        <RefusalAlert error={take.error} />
        <Group gap="xs" justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Not now
          </Button>
          <Button
            type="submit"
            loading={take.isPending}
            leftSection={<IconCash size={18} aria-hidden />}
          >
            Take the payment{value.amount ? `: ${money(value.amount)}` : ''}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
