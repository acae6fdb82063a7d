import { Button, SegmentedControl, Table } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { PurchaseOrderCard } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, Page, QueryView } from '../../common/page.tsx';
import { Sheet } from '../../common/sheet.tsx';
import { useMoney } from '../../common/shop.tsx';
import classes from './buying.module.css';
import { LinesToCome } from './lines-to-come.tsx';
import { OrderBadge } from './order-badge.tsx';

const WHICH = [
  { value: 'open', label: 'Still to come' },
  { value: 'lines', label: 'Part by part' },
  { value: 'all', label: 'All' },
];

/** Orders to suppliers: those that something is still owed of first. */
export function OrdersPage() {
  const navigate = useNavigate();
  const [which, setWhich] = useState('open');
  return (
    <Page
      title="Orders"
      actions={
        <Button
          leftSection={<IconPlus size={18} aria-hidden />}
          onClick={() => navigate('/parts/orders/new')}
        >
          New order
        </Button>
      }
    >
      <SegmentedControl
        aria-label="Which orders"
        data={WHICH}
        value={which}
        onChange={setWhich}
        mb="md"
      />
      {which === 'lines' ? <LinesToCome /> : <OrderCards open={which === 'open'} />}
    </Page>
  );
}

function OrderCards({ open }: { open: boolean }) {
  const query = useQuery({
    ...deskQuery.parts.orders.queryOptions({ input: { open } }),
    placeholderData: keepPreviousData,
  });
  return (
    <QueryView query={query}>
      {(orders) =>
        orders.length === 0 ? (
          <Empty
            title={open ? 'Nothing is on order' : 'Nothing was ordered yet'}
            hint="To order says what the shelves and the jobs want; a new order can also be written by hand."
          />
        ) : (
          <OrdersTable orders={orders} />
        )
      }
    </QueryView>
  );
}

function OrdersTable({ orders }: { orders: readonly PurchaseOrderCard[] }) {
  const money = useMoney();
  const format = useFormat();
  return (
    <Sheet>
      <Table className={classes.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Order</Table.Th>
            <Table.Th>Supplier</Table.Th>
            <Table.Th>Ordered</Table.Th>
            <Table.Th>Expected</Table.Th>
            <Table.Th className={classes.figure}>Open lines</Table.Th>
            <Table.Th className={classes.figure}>Goods</Table.Th>
            <Table.Th>
              <span className={classes.hidden}>State</span>
            </Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {orders.map((order) => (
            <Table.Tr key={order.id} className={classes.row}>
              <Table.Td className={classes.number}>
                <Link to={`/parts/order/${order.id}`} className={classes.link}>
                  {order.number}
                </Link>
              </Table.Td>
              <Table.Td>{order.supplierName}</Table.Td>
              <Table.Td className={classes.unbroken}>{format.day(order.at)}</Table.Td>
              <Table.Td>
                {order.expectedOn === null ? '–' : format.shortDate(order.expectedOn)}
              </Table.Td>
              <Table.Td className={classes.figure}>
                {order.openLines} of {order.lines}
              </Table.Td>
              <Table.Td className={classes.figure}>{money(order.goods)}</Table.Td>
              <Table.Td>
                <OrderBadge order={order} />
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
