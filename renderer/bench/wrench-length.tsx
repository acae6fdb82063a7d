import { Button, Group, Paper, Text, TextInput, Title } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { Gauge } from '../../shared/contract/bench/index.ts';
import { deskQuery } from '../common/desk.ts';
import { decimal } from '../common/measure/decimal.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';

/** How long a torque wrench's lever is: the torque walk works out the setting with an extension by it. */
export function WrenchLength({ gauge }: { readonly gauge: Gauge }) {
  const by = useBy();
  const measure = useWrite(deskQuery.bench.measureWrench.mutationOptions());
  const kept = gauge.length === null ? '' : String(gauge.length);
  const [typed, setTyped] = useState(kept);
  const [tried, setTried] = useState(false);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    const length = decimal(typed);
    if (length !== null) measure.mutate({ by, gaugeId: gauge.id, length });
  };
  return (
    <Paper withBorder p="md" component="section" aria-labelledby="lever">
      <Title order={2} id="lever" size="h3">
        Lever
      </Title>
      <Text maw="72ch" mt={4} mb="xs">
        From the square drive to the mark on the grip. With an extension the wrench is set by this
        length; hold it at the mark.
      </Text>
      <form onSubmit={submit}>
        <Group align="flex-end" gap="sm">
          <TextInput
            label="Length, mm"
            placeholder="not measured"
            inputMode="decimal"
            value={typed}
            onChange={(event) => setTyped(event.currentTarget.value)}
            error={
              tried && decimal(typed) === null
                ? 'Type a number, such as 240.'
                : fieldErrors(measure.error).length
            }
          />
          <Button type="submit" mih={44} loading={measure.isPending} disabled={typed === kept}>
            Keep this length
          </Button>
        </Group>
      </form>
      {measure.isError && <RefusalAlert error={measure.error} />}
    </Paper>
  );
}
