import { Group, Title } from '@mantine/core';
import { type ReactNode, useId } from 'react';
import classes from './overview.module.css';

interface CardProps {
  title: string;
  /** A link or a small button beside the heading. */
  aside?: ReactNode;
  children: ReactNode;
}

/** One matter of the job under its heading. */
export function Card({ title, aside, children }: CardProps) {
  const heading = useId();
  return (
    <section className={classes.card} aria-labelledby={heading}>
      <Group justify="space-between" mb={6} wrap="nowrap">
        <Title order={2} size="h5" id={heading}>
          {title}
        </Title>
        {aside}
      </Group>
      {children}
    </section>
  );
}
