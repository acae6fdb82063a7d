import { Title } from '@mantine/core';
import { type ReactNode, useId } from 'react';
import classes from './take-in.module.css';

/** Fields that belong together, under a heading that a screen reader says with them. */
export function FieldGroup({ title, children }: { title: string; children: ReactNode }) {
  const heading = useId();
  return (
    <section className={classes.group} aria-labelledby={heading}>
      <Title order={2} size="h5" id={heading} mb={6}>
        {title}
      </Title>
      {children}
    </section>
  );
}
