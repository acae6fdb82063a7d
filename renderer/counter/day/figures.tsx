import { Link } from 'react-router';
import classes from './day.module.css';
import type { Day } from './types.ts';

/** Four figures over the day; each opens the list behind it. */
export function Figures({ figures }: { figures: Day['figures'] }) {
  const all = [
    { label: 'open jobs', count: figures.open, to: '/jobs' },
    { label: 'ready to collect', count: figures.ready, to: '/jobs?show=ready' },
    { label: 'taken in this week', count: figures.takenInThisWeek, to: '/jobs?show=all' },
    {
      label: 'handed over this week',
      count: figures.handedOverThisWeek,
      to: '/jobs?show=handed-over',
    },
  ];
  return (
    <ul className={classes.figures} aria-label="The shop in figures">
      {all.map((figure) => (
        <li key={figure.label}>
          <Link to={figure.to} className={classes.figure}>
            <span className={classes.count}>{figure.count}</span>
            <span className={classes.label}>{figure.label}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
