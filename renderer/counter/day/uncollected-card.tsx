import { Text } from '@mantine/core';
import { IconCalendarDollar } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import { useArrowRows } from '../../common/arrow-rows.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { useMoney } from '../../common/shop.tsx';
import { LAW_ON_STORAGE } from '../../till/storage/storage-words.ts';
import classes from './day.module.css';

/** Machines that nobody has collected for long; nothing while there is none. */
export function UncollectedCard() {
  const money = useMoney();
  const { list, onListKey } = useArrowRows<HTMLUListElement>();
  const { data = [] } = useQuery(deskQuery.till.uncollected.queryOptions({ input: {} }));
  if (data.length === 0) return null;
  const costs = data.some(({ storage }) => storage.amount > 0);
  return (
    <Card
      title="Not collected"
      icon={<IconCalendarDollar size={22} aria-hidden />}
      flush
      aside={<Text fw={700}>{data.length}</Text>}
    >
      <ul ref={list} className={classes.rows} onKeyDown={onListKey}>
        {data.map(({ job, storage }) => (
          <li key={job.id}>
            <Link to={`/job/${job.code}/till`} data-row className={classes.waiting}>
              <span className={classes.who}>
                <bdi className={classes.name}>{job.customerName}</bdi>
                <span className={classes.what}>{job.machine}</span>
                {job.customerPhone !== '' && (
                  <span className={classes.note}>{job.customerPhone}</span>
                )}
              </span>
              <span className={classes.wait}>
                <span>{job.state === 'ready' ? 'Ready' : 'Stopped'}</span>
                <span className={classes.since}>for {storage.waited} days</span>
                {storage.toBill > 0 && <span>storage {money(storage.toBill)}</span>}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      {costs && (
        <Text size="xs" c="dimmed" px="md" py="xs">
          {LAW_ON_STORAGE}
        </Text>
      )}
    </Card>
  );
}
