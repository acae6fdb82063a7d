import type { ReactNode } from 'react';
import classes from './sheet.module.css';

/** The paper that a table or a list lies on where it has no card of its own; wide ones scroll on it. */
export const Sheet = ({ children }: { children: ReactNode }) => (
  <div className={classes.sheet}>{children}</div>
);
