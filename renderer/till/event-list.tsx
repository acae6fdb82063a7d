import { Box, Text } from '@mantine/core';
import type { ReactNode } from 'react';
import classes from './event-list.module.css';

interface Event {
  key: string;
  title: string;
  detail: string;
  /** Below it: its paper. */
  paper?: ReactNode;
}

/** What happened, one below the other: approvals, payments. */
export function EventList(props: { label: string; events: readonly Event[]; empty: string }) {
  if (props.events.length === 0) {
    return (
      <Text size="sm" c="dimmed">
        {props.empty}
      </Text>
    );
  }
  return (
    <ul className={classes.list} aria-label={props.label}>
      {props.events.map((event) => (
        <li key={event.key}>
          <Text fw={600}>{event.title}</Text>
          <Text size="sm" c="dimmed">
            {event.detail}
          </Text>
          {event.paper !== undefined && <Box mt={6}>{event.paper}</Box>}
        </li>
      ))}
    </ul>
  );
}
