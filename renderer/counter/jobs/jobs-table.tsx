import { Table } from '@mantine/core';
import type { KeyboardEvent, ReactNode, Ref } from 'react';
import { Link } from 'react-router';
import type { JobCard } from '../../../shared/contract/counter/index.ts';
import { StateBadge } from '../../common/badges.tsx';
import { useFormat } from '../../common/format.ts';
import { Promised } from '../../common/promised.tsx';
import { Sheet } from '../../common/sheet.tsx';
import classes from './jobs.module.css';

interface JobsTableProps {
  jobs: readonly JobCard[];
  listRef?: Ref<HTMLTableElement>;
  onKeyDown?: (event: KeyboardEvent) => void;
  /** Left out on a customer's own page. */
  withoutCustomer?: boolean;
  /** Inside a card, which has its own edge. */
  bare?: boolean;
}

/** Jobs a line each; the whole line opens the job. */
export function JobsTable({
  jobs,
  listRef,
  onKeyDown,
  withoutCustomer = false,
  bare = false,
}: JobsTableProps) {
  const format = useFormat();
  return (
    <Around bare={bare}>
      <Table ref={listRef} onKeyDown={onKeyDown} className={classes.table}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Job</Table.Th>
            {!withoutCustomer && <Table.Th>Customer</Table.Th>}
            <Table.Th>Machine and complaint</Table.Th>
            <Table.Th>State</Table.Th>
            <Table.Th>Promised</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {jobs.map((job) => (
            <Table.Tr key={job.id} className={classes.row}>
              <Table.Td className={classes.code}>
                <Link to={`/job/${job.code}`} data-row className={classes.link}>
                  {job.code}
                </Link>
              </Table.Td>
              {!withoutCustomer && (
                <Table.Td>
                  <bdi className={classes.name}>{job.customerName}</bdi>
                  <span className={classes.quiet}>{job.customerPhone}</span>
                </Table.Td>
              )}
              <Table.Td className={classes.words}>
                <span className={classes.machine}>{job.machine}</span>
                <bdi className={classes.complaint}>{job.complaint}</bdi>
              </Table.Td>
              <Table.Td>
                <StateBadge state={job.state} />
                <span className={classes.quiet}>for {format.since(job.stateSince)}</span>
              </Table.Td>
              <Table.Td>
                <Promised job={job} />
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Around>
  );
}

function Around({ bare, children }: { bare: boolean; children: ReactNode }) {
  return bare ? <div className={classes.bare}>{children}</div> : <Sheet>{children}</Sheet>;
}
