import { Button, Text } from '@mantine/core';
import { IconArrowRight } from '@tabler/icons-react';
import { Link } from 'react-router';
import { RUN_STANDING_WORDS, type RunStanding } from '../../../shared/work/bench/run-step.ts';
import { useJob } from '../../common/job.tsx';
import classes from './build.module.css';

/** How the runs stand, and the way to their own page. */
export function RunLink({ standing }: { readonly standing: RunStanding }) {
  const { code } = useJob();
  return (
    <div className={classes.page}>
      <Text fw={600}>{RUN_STANDING_WORDS[standing]}</Text>
      <Button
        component={Link}
        to={`/job/${code}/bench/run`}
        variant="light"
        size="lg"
        mih={52}
        className={classes.big}
        rightSection={<IconArrowRight size={20} aria-hidden />}
      >
        {standing === 'passed' ? 'Look at the test run' : 'Write the test run down'}
      </Button>
    </div>
  );
}
