import { Table, Text } from '@mantine/core';
import type { BillDifference } from '../../../shared/work/till/bill-differences.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from '../estimate/bill-lines.module.css';

/** How the bill would differ from what was approved; nothing when it doesn't. */
export function Differences({ differences }: { differences: readonly BillDifference[] }) {
  const money = useMoney();
  if (differences.length === 0) return null;
  const rows = differences.map((difference, place) => ({ difference, place }));
  return (
    <div>
      <Text size="sm" fw={600} aria-hidden>
        Otherwise than approved
      </Text>
      <Table verticalSpacing={4} className={classes.lines}>
        <Table.Caption className={classes.caption}>Otherwise than approved</Table.Caption>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Line</Table.Th>
            <Table.Th className={classes.figure}>Approved</Table.Th>
            <Table.Th className={classes.figure}>Billed</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {rows.map(({ difference: { description, approved, billed }, place }) => (
            <Table.Tr key={place}>
              <Table.Td>{description}</Table.Td>
              <Table.Td className={classes.figure}>
                {approved === null ? 'not in it' : money(approved)}
              </Table.Td>
              <Table.Td className={classes.figure}>
                {billed === null ? 'left out' : money(billed)}
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
      <Text size="xs" c="dimmed">
        Before discount on the whole and tax. The invoice prints the differences.
      </Text>
    </div>
  );
}
