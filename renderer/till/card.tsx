import { Group, Paper, Title } from '@mantine/core';
import { type ReactNode, useId } from 'react';

/** A part of the till with its heading; a region that a screen reader can jump to. */
export function Card(props: { title: string; aside?: ReactNode; children: ReactNode }) {
  const heading = useId();
  return (
    <Paper component="section" withBorder p="md" radius="md" aria-labelledby={heading}>
      <Group justify="space-between" mb="sm" gap="sm">
        <Title order={2} size="h3" id={heading}>
          {props.title}
        </Title>
        {props.aside}
      </Group>
      {props.children}
    </Paper>
  );
}
