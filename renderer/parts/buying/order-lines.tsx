import { ActionIcon, Table, Text } from '@mantine/core';
import { IconTrash } from '@tabler/icons-react';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { useMoney } from '../../common/shop.tsx';
import { QuantityInput } from '../quantity-input.tsx';
import classes from './buying.module.css';
import type { DraftLine } from './order-draft.ts';

/** The lines of an order that is being written. */
export function OrderLines(props: {
  lines: readonly DraftLine[];
  onChange: (lines: DraftLine[]) => void;
}) {
  const { lines, onChange } = props;
  const money = useMoney();
  const change = (place: number, changed: Partial<DraftLine>) =>
    onChange(lines.map((line, index) => (index === place ? { ...line, ...changed } : line)));
  return (
    <Table className={classes.table}>
      <Table.Thead>
        <Table.Tr>
          <Table.Th>Part</Table.Th>
          <Table.Th>For</Table.Th>
          <Table.Th>Quantity</Table.Th>
          <Table.Th>One costs</Table.Th>
          <Table.Th className={classes.figure}>Amount</Table.Th>
          <Table.Th>
            <span className={classes.hidden}>Take off</span>
          </Table.Th>
        </Table.Tr>
      </Table.Thead>
      <Table.Tbody>
        {lines.map((line, place) => {
          const name = line.jobCode === '' ? line.number : `${line.number} for ${line.jobCode}`;
          return (
            <Table.Tr key={`${line.partId} ${line.jobId ?? ''}`}>
              <Table.Td>
                <span className={classes.number}>{line.number}</span>
                <Text size="sm">{line.description}</Text>
                {line.supplierNumber !== '' && line.supplierNumber !== line.number && (
                  <div className={classes.small}>Theirs: {line.supplierNumber}</div>
                )}
              </Table.Td>
              <Table.Td>{line.jobCode === '' ? 'the shelf' : line.jobCode}</Table.Td>
              <Table.Td>
                <QuantityInput
                  className={classes.quantity}
                  label=""
                  aria-label={`Quantity of ${name}`}
                  unit={line.unit}
                  value={line.quantity}
                  onChange={(quantity) => change(place, { quantity })}
                />
              </Table.Td>
              <Table.Td>
                <MoneyInput
                  className={classes.price}
                  label=""
                  aria-label={`One ${name} costs`}
                  value={line.unitCost}
                  onChange={(unitCost) => change(place, { unitCost })}
                />
              </Table.Td>
              <Table.Td className={classes.figure}>
                {money(costAt(line.unitCost ?? 0, line.quantity ?? 0))}
              </Table.Td>
              <Table.Td>
                <ActionIcon
                  variant="subtle"
                  color="gray"
                  size={44}
                  aria-label={`Take ${name} off the order`}
                  onClick={() => onChange(lines.filter((_, index) => index !== place))}
                >
                  <IconTrash size={18} aria-hidden />
                </ActionIcon>
              </Table.Td>
            </Table.Tr>
          );
        })}
      </Table.Tbody>
    </Table>
  );
}
