import { Button } from '@mantine/core';
import { IconArrowRight } from '@tabler/icons-react';
import { Link } from 'react-router';
import { useJob } from '../../common/job.tsx';

/** The record of the test run has a page of its own. */
export function RunLink() {
  const { code } = useJob();
  return (
    <Button
      component={Link}
      to={`/job/${code}/bench/run`}
      variant="light"
      size="lg"
      mih={52}
      rightSection={<IconArrowRight size={20} aria-hidden />}
    >
      Write the test run down
    </Button>
  );
}
