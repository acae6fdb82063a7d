import { Fragment, type ReactNode } from 'react';
import classes from './overview.module.css';

export interface Fact {
  name: string;
  /** Null or empty: nobody asked, or there was nothing to say. */
  value: ReactNode;
}

/** Facts with their names; what nobody noted says so instead of leaving a hole. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  return (
    <dl className={classes.facts}>
      {Object.entries(facts).map(([place, { name, value }]) => (
        <Fragment key={place}>
          <dt>{name}</dt>
          <dd dir="auto">{value === null || value === '' ? 'not noted' : value}</dd>
        </Fragment>
      ))}
    </dl>
  );
}
