import { Button } from '@mantine/core';
import { IconPlugConnectedX } from '@tabler/icons-react';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { deskQuery } from '../desk.ts';
import { refusalOf } from '../refusal.tsx';
import classes from './connection-banner.module.css';

const CALM = 20_000;
const LOST = 2_500;

/** Says when nobody answers at the desk, keeps asking, and goes away by itself when it does. */
export function ConnectionBanner() {
  const client = useQueryClient();
  const pulse = useQuery(
    deskQuery.office.about.queryOptions({
      input: {},
      refetchInterval: (query) => (query.state.status === 'error' ? LOST : CALM),
    }),
  );
  const lost = pulse.isError;
  const wasLost = useRef(false);
  useEffect(() => {
    // What the pages show may be old by now.
    if (wasLost.current && !lost) void client.invalidateQueries();
    wasLost.current = lost;
  }, [lost, client]);

  if (!lost) return null;
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
