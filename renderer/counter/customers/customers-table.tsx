import { Table } from '@mantine/core';
import type { KeyboardEvent, Ref } from 'react';
import { Link } from 'react-router';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { REACH_BY_LABELS } from '../../../shared/work/vocabulary.ts';
import { Sheet } from '../../common/sheet.tsx';
import rowClasses from '../jobs/jobs.module.css';

interface CustomersTableProps {
  customers: readonly Customer[];
  listRef: Ref<HTMLTableElement>;
  onKeyDown: (event: KeyboardEvent) => void;
}

export function CustomersTable({ customers, listRef, onKeyDown }: CustomersTableProps) {
  return (
    <Sheet>
      <Table ref={listRef} onKeyDown={onKeyDown} className={rowClasses.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Name</Table.Th>
            <Table.Th>Telephone</Table.Th>
            <Table.Th>E-mail</Table.Th>
            <Table.Th>Reach by</Table.Th>
            <Table.Th>No.</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {customers.map((customer) => (
            <Table.Tr key={customer.id} className={rowClasses.row}>
              <Table.Td>
                <Link to={`/customer/${customer.id}`} data-row className={rowClasses.link}>
                  <bdi>{customer.name}</bdi>
                </Link>
                <bdi className={rowClasses.complaint}>{customer.note}</bdi>
              </Table.Td>
              <Table.Td className={rowClasses.figure}>{customer.phone}</Table.Td>
              <Table.Td>{customer.email}</Table.Td>
              <Table.Td>{REACH_BY_LABELS[customer.reachBy]}</Table.Td>
              <Table.Td className={rowClasses.figure}>{customer.number}</Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
