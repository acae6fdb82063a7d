import { Title } from '@mantine/core';
import { type ReactNode, useId } from 'react';
import classes from './card.module.css';

interface CardProps {
  title: string;
  icon?: ReactNode;
  /** On the right of the heading: a count, a button. */
  aside?: ReactNode;
  /** Lists and tables go to the card's edges. */
  flush?: boolean;
  children: ReactNode;
}

/** A part of a page under its own h2. */
export function Card({ title, icon, aside, flush = false, children }: CardProps) {
  const id = useId();
  return (
    <section
      aria-labelledby={id}
      className={flush ? `${classes.card} ${classes.flush}` : classes.card}
    >
      <div className={classes.heading}>
        {icon}
        <Title order={2} size="h3" id={id} flex={1}>
          {title}
        </Title>
        {aside}
      </div>
      {children}
    </section>
  );
}
