import { Button, Group } from '@mantine/core';
import { type SyntheticEvent, useState } from 'react';
import type { ClockEntry } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../desk.ts';
import { fieldErrors, RefusalAlert } from '../refusal.tsx';
import { useShop } from '../shop.tsx';
import { useBy } from '../station.tsx';
import { useWrite } from '../use-write.ts';
import { TimeField } from './time-field.tsx';
import { spanAt, wallAt } from './time-text.ts';

/** Asks when the work of a forgotten clock really stopped. */
export function StopForgotten({ entry }: { entry: ClockEntry }) {
  const by = useBy();
  const { timeZone } = useShop();
  const began = wallAt(entry.startedAt, timeZone);
  const [stopped, setStopped] = useState<string | null>(null);
  const [asked, setAsked] = useState(false);
  const off = useWrite(deskQuery.till.clockOff.mutationOptions());
  const missing = asked && stopped === null ? 'Say when the work stopped.' : undefined;

  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    setAsked(true);
    if (stopped === null) return;
    const { endedAt } = spanAt({ date: began.date, from: began.time, to: stopped }, timeZone);
    off.mutate({ by, entryId: entry.id, endedAt });
  };

  return (
    <form onSubmit={send} noValidate aria-label={`When ${entry.staffName} stopped`}>
      <Group gap="sm" align="flex-start">
        <TimeField
          label="Stopped at"
          w="11rem"
          value={stopped}
          onChange={setStopped}
          after={began.time}
          error={fieldErrors(off.error).endedAt ?? missing}
        />
        <Button type="submit" mt="1.65rem" h={42} loading={off.isPending}>
          Stop the clock
        </Button>
      </Group>
      <RefusalAlert error={off.error} brief mb="0" />
    </form>
  );
}
