import { Table, Text } from '@mantine/core';
import type { Line } from '../../../shared/contract/till/index.ts';
import { formatQuantity, formatRate } from '../../../shared/money/index.ts';
import { LINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { useMoney, useShop } from '../../common/shop.tsx';
import classes from './bill-lines.module.css';

/** Lines that can't be changed any more: of an earlier revision or of an issued invoice. */
export function BillLines({ lines, caption }: { lines: readonly Line[]; caption: string }) {
  const money = useMoney();
  const { locale } = useShop();
  const rows = lines.map((line, index) => ({ line, position: index + 1 }));
  return (
    <Table verticalSpacing={6} className={classes.lines}>
      <Table.Caption className={classes.caption}>{caption}</Table.Caption>
      <Table.Thead>
        <Table.Tr>
          <Table.Th>Description</Table.Th>
          <Table.Th>Kind</Table.Th>
          <Table.Th className={classes.figure}>Quantity</Table.Th>
          <Table.Th className={classes.figure}>Unit price</Table.Th>
          <Table.Th className={classes.figure}>Amount</Table.Th>
        </Table.Tr>
      </Table.Thead>
      <Table.Tbody>
        {rows.map(({ line, position }) => (
          <Table.Tr key={position}>
            <Table.Td>
              {line.description}
              {line.partNumber !== '' && (
                <Text size="xs" c="dimmed">
                  Part {line.partNumber}
                </Text>
              )}
              {line.discounted > 0 && (
                <Text size="xs" c="dimmed">
                  Less{' '}
                  {line.discount?.by === 'share'
                    ? `${formatRate(line.discount.ppm, locale)}, `
                    : ''}
                  {money(line.discounted)}
                </Text>
              )}
              {line.note !== '' && (
                <Text size="xs" c="dimmed" dir="auto">
                  {line.note}
                </Text>
              )}
            </Table.Td>
            <Table.Td>{LINE_KIND_LABELS[line.kind]}</Table.Td>
            <Table.Td className={classes.figure}>
              {formatQuantity(line.quantity, locale)} {line.unit}
            </Table.Td>
            <Table.Td className={classes.figure}>{money(line.unitPrice)}</Table.Td>
            <Table.Td className={classes.amount}>{money(line.amount)}</Table.Td>
          </Table.Tr>
        ))}
      </Table.Tbody>
    </Table>
  );
}
