import { Table, Text } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { LineToCome } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Empty, QueryView } from '../../common/page.tsx';
import { Sheet } from '../../common/sheet.tsx';
import classes from './buying.module.css';
import { LateBadge } from './order-badge.tsx';
import { useAmount } from './use-amount.ts';

/** All that suppliers still owe, part by part: what to ask for when they are on the telephone. */
export function LinesToCome() {
  const query = useQuery(deskQuery.parts.toCome.queryOptions({ input: {} }));
  return (
    <QueryView query={query}>
      {(lines) =>
        lines.length === 0 ? (
          <Empty title="Nothing is on order" hint="No supplier owes anything." />
        ) : (
          <Sheet>
            <Table className={classes.table}>
              <Table.Thead>
                <Table.Tr>
                  <Table.Th>Order</Table.Th>
                  <Table.Th>Part</Table.Th>
                  <Table.Th>Supplier</Table.Th>
                  <Table.Th className={classes.figure}>To come</Table.Th>
                  <Table.Th>Expected</Table.Th>
                  <Table.Th>For</Table.Th>
                </Table.Tr>
              </Table.Thead>
              <Table.Tbody>
                {lines.map((line) => (
                  <LineRow key={line.lineId} line={line} />
                ))}
              </Table.Tbody>
            </Table>
          </Sheet>
        )
      }
    </QueryView>
  );
}

function LineRow({ line }: { line: LineToCome }) {
  const amount = useAmount();
  const format = useFormat();
  const { part, owed, received, expectedOn, jobCode } = line;
  return (
    <Table.Tr className={classes.row}>
      <Table.Td className={classes.number}>
        <Link to={`/parts/order/${line.orderId}`} className={classes.link}>
          {line.orderNumber}
        </Link>
      </Table.Td>
      <Table.Td>
        <span className={classes.number}>{part.number}</span>
        <Text size="sm">{part.description}</Text>
      </Table.Td>
      <Table.Td>{line.supplierName}</Table.Td>
      <Table.Td className={classes.figure}>
        {amount(owed, part.unit)}
        {received > 0 && (
          <div className={classes.small}>back-order, {amount(received, part.unit)} came</div>
        )}
      </Table.Td>
      <Table.Td>
        {expectedOn === null ? '–' : format.shortDate(expectedOn)}
        {line.late && (
          <div>
            <LateBadge />
          </div>
        )}
      </Table.Td>
      <Table.Td className={classes.unbroken}>{jobCode === '' ? 'the shelf' : jobCode}</Table.Td>
    </Table.Tr>
  );
}
