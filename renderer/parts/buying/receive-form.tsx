import { Button, Checkbox, Group, SimpleGrid, Stack, Table, Text, TextInput } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type {
  PurchaseOrder,
  PurchaseOrderLine,
  Received,
} from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { QuantityInput } from '../quantity-input.tsx';
import classes from './buying.module.css';
import { useAmount } from './use-amount.ts';

/** What came of one line, as it is typed. */
interface Came {
  quantity: number | null;
  unitCost: number | null;
}

interface ReceiveFormProps {
  order: PurchaseOrder;
  onReceived: (received: readonly Received[]) => void;
}

/** Takes in a delivery: how many of each line came, and at what price. */
export function ReceiveForm({ order, onReceived }: ReceiveFormProps) {
  const by = useBy();
  const open = order.items.filter(({ owed }) => owed > 0);
  const [draft, setDraft, clear] = useDraft(`delivery.${order.id}`, {
    came: {} as Record<string, Came>,
    deliveryNote: '',
    carriage: null as number | null,
    shareCarriage: false,
    takeOnCosts: true,
  });
  const [keepMore, setKeepMore] = useState(false);
  const set = (change: Partial<typeof draft>) => setDraft((before) => ({ ...before, ...change }));
  const cameOf = (item: PurchaseOrderLine): Came =>
    draft.came[item.id] ?? { quantity: null, unitCost: item.unitCost };
  const setCame = (item: PurchaseOrderLine, change: Partial<Came>) =>
    set({ came: { ...draft.came, [item.id]: { ...cameOf(item), ...change } } });
  const receive = useWrite(
    deskQuery.parts.receive.mutationOptions({
      onSuccess: ({ received }) => {
        clear();
        onReceived(received);
      },
    }),
  );
  const errors = fieldErrors(receive.error);
  const tooMany = receive.error !== null && refusalOf(receive.error).code === 'MORE_THAN_ORDERED';
  const lines = open.flatMap((item) => {
    const { quantity, unitCost } = cameOf(item);
    return quantity === null || quantity <= 0 || unitCost === null
      ? []
      : [{ lineId: item.id, quantity, unitCost }];
  });

  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (lines.length === 0) return;
    const { deliveryNote, carriage, shareCarriage, takeOnCosts } = draft;
    receive.mutate({
      by,
      orderId: order.id,
      lines,
      deliveryNote,
      carriage: carriage ?? 0,
      shareCarriage,
      takeOnCosts,
      keepMore,
    });
  };
  const all = () =>
    set({
      came: Object.fromEntries(
        open.map((item) => [item.id, { ...cameOf(item), quantity: item.owed }]),
      ),
    });

  return (
    <form onSubmit={send}>
      <Table className={classes.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Part</Table.Th>
            <Table.Th className={classes.figure}>To come</Table.Th>
            <Table.Th>Came</Table.Th>
            <Table.Th>One costs</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {open.map((item) => (
            <ReceiveRow
              key={item.id}
              item={item}
              came={cameOf(item)}
              onChange={(change) => setCame(item, change)}
            />
          ))}
        </Table.Tbody>
      </Table>
      <Stack gap="sm" p="md">
        <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm" maw="36rem">
          <TextInput
            label="Delivery note"
            maxLength={60}
            autoComplete="off"
            value={draft.deliveryNote}
            error={errors.deliveryNote}
            onChange={(event) => set({ deliveryNote: event.currentTarget.value })}
          />
          <MoneyInput
            label="Carriage of this delivery"
            value={draft.carriage}
            error={errors.carriage}
            onChange={(carriage) => set({ carriage })}
          />
        </SimpleGrid>
        <Checkbox
          label="Share the carriage out over what came"
          checked={draft.shareCarriage}
          onChange={(event) => set({ shareCarriage: event.currentTarget.checked })}
        />
        <Checkbox
          label="From now on the parts cost what was paid"
          checked={draft.takeOnCosts}
          onChange={(event) => set({ takeOnCosts: event.currentTarget.checked })}
        />
        <RefusalAlert error={receive.error} />
        {tooMany && (
          <Checkbox
            label="The count is right: keep what came beyond the order"
            checked={keepMore}
            onChange={(event) => setKeepMore(event.currentTarget.checked)}
          />
        )}
        <Group justify="space-between">
          <Button variant="default" onClick={all}>
            All of it came
          </Button>
          <Button type="submit" loading={receive.isPending} disabled={lines.length === 0}>
            Take it in
          </Button>
        </Group>
      </Stack>
    </form>
  );
}

function ReceiveRow(props: {
  item: PurchaseOrderLine;
  came: Came;
  onChange: (change: Partial<Came>) => void;
}) {
  const { item, came, onChange } = props;
  const money = useMoney();
  const amount = useAmount();
  const { part, owed, unitCost: ordered, jobCode } = item;
  const name = jobCode === '' ? part.number : `${part.number} for ${jobCode}`;
  const left = owed - (came.quantity ?? 0);
  return (
    <Table.Tr>
      <Table.Td>
        <span className={classes.number}>{part.number}</span>
        <Text size="sm">{part.description}</Text>
        {jobCode !== '' && <Text size="sm">For {jobCode}</Text>}
      </Table.Td>
      <Table.Td className={classes.figure}>{amount(owed, part.unit)}</Table.Td>
      <Table.Td>
        <QuantityInput
          className={classes.quantity}
          label=""
          aria-label={`Came of ${name}`}
          unit={part.unit}
          value={came.quantity}
          onChange={(quantity) => onChange({ quantity })}
        />
        {came.quantity !== null && left !== 0 && (
          <div className={classes.small}>
            {left > 0
              ? `${amount(left, part.unit)} still to come`
              : `${amount(-left, part.unit)} too many`}
          </div>
        )}
      </Table.Td>
      <Table.Td>
        <MoneyInput
          className={classes.price}
          label=""
          aria-label={`One ${name} costs`}
          value={came.unitCost}
          onChange={(unitCost) => onChange({ unitCost })}
        />
        {came.unitCost !== null && came.unitCost !== ordered && (
          <div className={classes.small}>
            Ordered at {money(ordered)}: {money(Math.abs(came.unitCost - ordered))}{' '}
            {came.unitCost > ordered ? 'dearer' : 'cheaper'}
          </div>
        )}
      </Table.Td>
    </Table.Tr>
  );
}
