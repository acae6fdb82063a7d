import { Table, Text } from '@mantine/core';
import type { KeyboardEvent, RefObject } from 'react';
import { Link } from 'react-router';
import type { Part } from '../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../shared/money/index.ts';
import { available } from '../../shared/work/parts/stock-ledger.ts';
import { Sheet } from '../common/sheet.tsx';
import { useMoney, useShop } from '../common/shop.tsx';
import classes from './parts-table.module.css';
import { ShelfBadge } from './shelf-badge.tsx';

interface PartsTableProps {
  parts: readonly Part[];
  list: RefObject<HTMLTableElement | null>;
  onKey: (event: KeyboardEvent) => void;
}

/** Parts, one a row; the whole row opens the part. */
export function PartsTable({ parts, list, onKey }: PartsTableProps) {
  const money = useMoney();
  const { locale } = useShop();
  return (
    <Sheet>
      <Table className={classes.parts} ref={list} onKeyDown={onKey}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Number</Table.Th>
            <Table.Th>Part</Table.Th>
            <Table.Th>Bin</Table.Th>
            <Table.Th className={classes.figure}>On hand</Table.Th>
            <Table.Th>
              <span className={classes.hidden}>Reorder</span>
            </Table.Th>
            <Table.Th className={classes.figure}>Price</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {parts.map((part) => (
            <Table.Tr key={part.id} className={classes.row}>
              <Table.Td className={classes.number}>
                <Link to={`/part/${part.id}`} className={classes.link} data-row>
                  {part.number}
                </Link>
              </Table.Td>
              <Table.Td>
                {part.description}
                {part.supplier !== '' && (
                  <Text size="xs" c="dimmed">
                    {part.supplier}
                  </Text>
                )}
              </Table.Td>
              <Table.Td>{part.bin === '' ? '–' : part.bin}</Table.Td>
              <Table.Td className={classes.figure}>
                {part.onHand < 0 ? '−' : ''}
                {formatQuantity(Math.abs(part.onHand), locale)} {part.unit}
                {part.promised > 0 && (
                  <Text size="xs" c="dimmed">
                    {formatQuantity(available(part), locale)} free
                  </Text>
                )}
              </Table.Td>
              <Table.Td>
                <ShelfBadge part={part} />
              </Table.Td>
              <Table.Td className={classes.figure}>{money(part.sellsAt)}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
