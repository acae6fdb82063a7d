import { Alert, Anchor, Text } from '@mantine/core';
import { IconClockQuestion } from '@tabler/icons-react';
import { Link, useLocation } from 'react-router';
import { useFormat } from '../format.ts';
import classes from './clock.module.css';
import { StopForgotten } from './stop-forgotten.tsx';
import { lastedWords } from './time-text.ts';
import { useMyClock } from './use-clock.ts';

/** On top of every page while the clock of whoever is here was probably forgotten. */
export function ForgottenClock() {
  const entry = useMyClock();
  const format = useFormat();
  const { pathname } = useLocation();
  // The page of hours asks it itself.
  if (entry === null || entry.forgotten === null || pathname === '/hours') return null;
  return (
    <Alert
      className={classes.forgotten ?? ''}
      color="yellow"
      icon={<IconClockQuestion aria-hidden />}
      title={`Your clock has run for ${lastedWords(entry.minutes)}. When did you stop?`}
    >
      <Text size="sm" mb="xs">
        <Anchor component={Link} to={`/job/${entry.jobCode}`} inherit>
          {entry.jobCode}
        </Anchor>
        , {entry.machine}, since {format.instant(entry.startedAt)}. If you are still on it, enter
        the time now and clock on again.
      </Text>
      <StopForgotten key={entry.id} entry={entry} />
    </Alert>
  );
}
