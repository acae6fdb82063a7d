import { Button } from '@mantine/core';
import { IconPlugConnectedX } from '@tabler/icons-react';
import { refusalOf } from '../refusal.tsx';
import classes from './connection-banner.module.css';
import { usePulse } from './use-pulse.ts';

/** Says when nobody answers at the desk, keeps asking, and goes away by itself when it does. */
export function ConnectionBanner() {
  const pulse = usePulse();
  if (!pulse.isError) return null;
  return (
    <div role="alert" className={classes.banner}>
      <IconPlugConnectedX size={22} aria-hidden />
      <span className={classes.words}>{refusalOf(pulse.error).message}</span>
      <Button
        variant="white"
        color="dark"
        loading={pulse.isFetching}
        onClick={() => void pulse.refetch()}
      >
        Try again
      </Button>
    </div>
  );
}
