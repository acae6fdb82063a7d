import {
  Button,
  Group,
  Modal,
  SegmentedControl,
  Stack,
  Text,
  Textarea,
  TextInput,
} from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { Gauge } from '../../shared/contract/bench/index.ts';
import { DateField } from '../common/date-field.tsx';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../common/refusal.tsx';
import { useToday } from '../common/shop.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import classes from './bench.module.css';

interface CheckDraft {
  found: 'good' | 'bad';
  on: string | null;
  dueOn: string | null;
  certificate: string;
  note: string;
}

/** A check of a gauge, good or bad. */
export function GaugeCheckForm({
  gauge,
  opened,
  onClose,
}: {
  readonly gauge: Gauge;
  readonly opened: boolean;
  readonly onClose: () => void;
}) {
  return (
    <Modal opened={opened} onClose={onClose} title={`Check of ${gauge.name}`} size="lg">
      <CheckFields gauge={gauge} onDone={onClose} />
    </Modal>
  );
}

function CheckFields({ gauge, onDone }: { readonly gauge: Gauge; readonly onDone: () => void }) {
  const by = useBy();
  const today = useToday();
  const [draft, setDraft, clear] = useDraft<CheckDraft>(`gauge-check.${gauge.id}`, {
    found: 'good',
    on: today,
    dueOn: null,
    certificate: '',
    note: '',
  });
  const [tried, setTried] = useState(false);
  const check = useWrite(deskQuery.bench.checkGauge.mutationOptions());
  const errors = fieldErrors(check.error);
  const set = (change: Partial<CheckDraft>) => setDraft({ ...draft, ...change });
  const good = draft.found === 'good';

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (draft.on === null || check.isPending) return;
    check.mutate(
      {
        by,
        gaugeId: gauge.id,
        on: draft.on,
        good,
        dueOn: good ? draft.dueOn : null,
        certificate: draft.certificate,
        note: draft.note,
      },
      {
        onSuccess: () => {
          clear();
          onDone();
        },
      },
    );
  };

  return (
    <form onSubmit={submit}>
      <Stack>
        <SegmentedControl
          aria-label="What the check found"
          data={[
            { value: 'good', label: 'Good' },
            { value: 'bad', label: 'Found bad' },
          ]}
          value={draft.found}
          onChange={(found) => set({ found })}
          size="md"
          classNames={{ label: classes.segment }}
        />
        {!good && (
          <Text className={classes.caution}>
            It goes out of use. Every reading it took since it was last found good is listed, and
            says so from then on.
          </Text>
        )}
        <Group grow align="flex-start">
          <DateField
            label="Checked on"
            value={draft.on}
            onChange={(on) => set({ on })}
            error={
              errors.on ?? (tried && draft.on === null ? 'Give the day of the check.' : undefined)
            }
          />
          {good && (
            <DateField
              label="Next check due"
              value={draft.dueOn}
              onChange={(dueOn) => set({ dueOn })}
              error={errors.dueOn}
            />
          )}
        </Group>
        <TextInput
          label="Certificate"
          value={draft.certificate}
          onChange={(event) => set({ certificate: event.currentTarget.value })}
          error={errors.certificate}
        />
        <Textarea
          label={good ? 'Checked against, and what it showed' : 'What is wrong with it'}
          required={!good}
          autosize
          minRows={2}
          value={draft.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
          error={errors.note}
        />
        {check.isError && <RefusalAlert error={check.error} />}
        <Group justify="flex-end">
          <Button variant="default" mih={44} onClick={onDone}>
            Close
          </Button>
          <Button type="submit" mih={44} loading={check.isPending}>
            {good ? 'Enter the check' : 'Put it out of use'}
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
