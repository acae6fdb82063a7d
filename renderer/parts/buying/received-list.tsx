import { Alert, Table } from '@mantine/core';
import { IconPackageImport } from '@tabler/icons-react';
import type { Received } from '../../../shared/contract/parts/index.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from './buying.module.css';
import { useAmount } from './use-amount.ts';

/** What a delivery did to the shelf: old and new costs, and which job has its part now. */
export function ReceivedList({ received }: { received: readonly Received[] }) {
  const money = useMoney();
  const amount = useAmount();
  const from = (before: number | null, after: number | null) =>
    before === after || before === null
      ? money(after ?? 0)
      : `${money(before)} → ${money(after ?? 0)}`;
  return (
    <Alert
      role="status"
      color="green"
      variant="light"
      icon={<IconPackageImport aria-hidden />}
      title="On the shelf"
    >
      <Table>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Part</Table.Th>
            <Table.Th className={classes.figure}>In</Table.Th>
            <Table.Th className={classes.figure}>Ordered at, paid</Table.Th>
            <Table.Th className={classes.figure}>Average on the shelf</Table.Th>
            <Table.Th className={classes.figure}>One costs the shop</Table.Th>
            <Table.Th>For</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {received.map((line) => (
            <Table.Tr key={`${line.part.id} ${line.jobCode}`}>
              <Table.Td>{line.part.number}</Table.Td>
              <Table.Td className={classes.figure}>
                {amount(line.quantity, line.part.unit)}
              </Table.Td>
              <Table.Td className={classes.figure}>{from(line.orderedAt, line.paid)}</Table.Td>
              <Table.Td className={classes.figure}>
                {from(line.averageBefore, line.averageAfter)}
              </Table.Td>
              <Table.Td className={classes.figure}>
                {from(line.costBefore, line.costAfter)}
              </Table.Td>
              <Table.Td>{line.jobCode === '' ? 'the shelf' : line.jobCode}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Alert>
  );
}
