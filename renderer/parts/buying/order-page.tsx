import { Anchor, Box, Button, Group, Stack, Table, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconFileSpreadsheet } from '@tabler/icons-react';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useParams } from 'react-router';
import type {
  PurchaseOrder,
  PurchaseOrderLine,
  Received,
} from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { desk, deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Page, QueryView } from '../../common/page.tsx';
import { PaperButton } from '../../common/paper-button.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { saveFile } from '../../common/save-file.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from './buying.module.css';
import { CloseShortDialog } from './close-short-dialog.tsx';
import { ExpectedDialog } from './expected-dialog.tsx';
import { OrderBadge } from './order-badge.tsx';
import { ReceiveForm } from './receive-form.tsx';
import { ReceivedList } from './received-list.tsx';
import { useAmount } from './use-amount.ts';

/** One order: what was ordered, what came of it, and what came in just now. */
export function OrderPage() {
  const { id = '' } = useParams();
  const query = useQuery(deskQuery.parts.order.queryOptions({ input: { id } }));
  return (
    <QueryView query={query}>
      {(order) => (
        <Page
          title={`Order ${order.number}`}
          description={
            <>
              {order.supplierName} ·{' '}
              <Anchor inherit component={Link} to="/parts/orders">
                All orders
              </Anchor>
            </>
          }
          actions={
            <>
              <PaperButton paper={order.paper} />
              <CsvButton order={order} />
            </>
          }
        >
          <OrderParts key={order.id} order={order} />
        </Page>
      )}
    </QueryView>
  );
}

function CsvButton({ order }: { order: PurchaseOrder }) {
  const save = useMutation({
    mutationFn: () => desk.parts.orderFile({ id: order.id, mark: true }),
    onSuccess: ({ fileName, text }) => saveFile(fileName, text, 'text/csv;charset=utf-8'),
  });
  return (
    <>
      <Button
        variant="default"
        mih={44}
        leftSection={<IconFileSpreadsheet size={18} aria-hidden />}
        loading={save.isPending}
        onClick={() => save.mutate()}
      >
        As CSV
      </Button>
      <RefusalAlert error={save.error} />
    </>
  );
}

function OrderParts({ order }: { order: PurchaseOrder }) {
  const [received, setReceived] = useState<readonly Received[]>([]);
  const [closing, dialog] = useDisclosure(false);
  const [moving, day] = useDisclosure(false);
  const open = order.state !== 'complete';
  return (
    <Stack gap="md">
      <Facts order={order} />
      {received.length > 0 && <ReceivedList received={received} />}
      {open && (
        <Card
          title="What came in"
          aside={
            <Group gap={4}>
              <Button variant="subtle" color="gray" onClick={day.open}>
                Expected on another day
              </Button>
              <Button variant="subtle" color="gray" onClick={dialog.open}>
                Wait no longer
              </Button>
            </Group>
          }
          flush
        >
          <ReceiveForm
            // What is owed has changed with each delivery: the fields begin anew.
            key={order.items.map(({ owed }) => owed).join()}
            order={order}
            onReceived={setReceived}
          />
        </Card>
      )}
      <OrderedLines order={order} />
      {moving && <ExpectedDialog order={order} onClose={day.close} />}
      {closing && <CloseShortDialog order={order} onClose={dialog.close} />}
    </Stack>
  );
}

function Facts({ order }: { order: PurchaseOrder }) {
  const money = useMoney();
  const format = useFormat();
  const facts: [string, string][] = [
    ['Ordered', `${format.day(order.at)}, ${order.by}`],
    ['Expected', order.expectedOn === null ? 'nobody knows' : format.date(order.expectedOn)],
    ['Goods', money(order.goods)],
    ['Carriage', order.carriage === 0 ? 'free' : money(order.carriage)],
    ['Note', order.note],
  ];
  return (
    <div>
      <Box mb="sm">
        <OrderBadge order={order} />
      </Box>
      <dl className={classes.facts}>
        {facts
          .filter(([, words]) => words !== '')
          .map(([label, words]) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{words}</dd>
            </div>
          ))}
      </dl>
    </div>
  );
}

function OrderedLines({ order }: { order: PurchaseOrder }) {
  const money = useMoney();
  const amount = useAmount();
  const format = useFormat();
  return (
    <Card title="What was ordered" flush>
      <Table className={classes.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Part</Table.Th>
            <Table.Th className={classes.figure}>Ordered</Table.Th>
            <Table.Th className={classes.figure}>In</Table.Th>
            <Table.Th className={classes.figure}>To come</Table.Th>
            <Table.Th className={classes.figure}>Price</Table.Th>
            <Table.Th>What came of it</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {order.items.map((item) => (
            <Table.Tr key={item.id}>
              <Table.Td>
                <Anchor
                  inherit
                  component={Link}
                  to={`/part/${item.part.id}`}
                  className={classes.number}
                >
                  {item.part.number}
                </Anchor>
                <Text size="sm">{item.part.description}</Text>
                {item.supplierNumber !== item.part.number && (
                  <div className={classes.small}>Theirs: {item.supplierNumber}</div>
                )}
                {item.jobCode !== '' && (
                  <Text size="sm">
                    For{' '}
                    <Anchor inherit component={Link} to={`/job/${item.jobCode}`}>
                      {item.jobCode}
                    </Anchor>
                  </Text>
                )}
              </Table.Td>
              <Table.Td className={classes.figure}>{amount(item.ordered, item.part.unit)}</Table.Td>
              <Table.Td className={classes.figure}>
                {amount(item.received, item.part.unit)}
              </Table.Td>
              <Table.Td className={classes.figure}>{amount(item.owed, item.part.unit)}</Table.Td>
              <Table.Td className={classes.figure}>{money(item.unitCost)}</Table.Td>
              <Table.Td>
                <ExpectedDay item={item} />
                {item.events.map((event) => (
                  <div
                    key={`${event.at} ${event.kind} ${event.quantity}`}
                    className={classes.small}
                  >
                    {format.day(event.at)}, {event.by}: {amount(event.quantity, item.part.unit)}{' '}
                    {event.kind === 'received' ? 'came,' : 'given up,'} {event.words}
                  </div>
                ))}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Card>
  );
}

/** When what is still to come of a line is expected, and each time that this was moved. */
function ExpectedDay({ item }: { item: PurchaseOrderLine }) {
  const format = useFormat();
  const { owed, expectedOn, expectedChanges } = item;
  const day = (date: string | null) => (date === null ? 'nobody knows when' : format.date(date));
  return (
    <>
      {owed > 0 && <Text size="sm">Expected: {day(expectedOn)}</Text>}
      {expectedChanges.map((change) => (
        <div key={change.at} className={classes.small}>
          {format.day(change.at)}, {change.by}: {day(change.expectedOn)} in place of{' '}
          {day(change.former)}, {change.reason}
        </div>
      ))}
    </>
  );
}
