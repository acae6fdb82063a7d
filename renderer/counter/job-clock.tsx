import { Button, Group, Menu, Modal, Stack, Text } from '@mantine/core';
import { IconChevronDown, IconClockPause, IconClockPlay } from '@tabler/icons-react';
import { useState } from 'react';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import { lastedFigure, lastedWords } from '../common/clock/time-text.ts';
import { useMyClock, useWorkKinds, workKindLabel } from '../common/clock/use-clock.ts';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';

/** Clocks whoever is at this station on to the job and off again. */
export function JobClock({ job }: { job: JobDossier }) {
  const by = useBy();
  const kinds = useWorkKinds();
  const mine = useMyClock();
  const format = useFormat();
  /** The kind of work to which somebody would go over from another job. */
  const [asking, setAsking] = useState<string | null>(null);
  const on = useWrite(deskQuery.till.clockOn.mutationOptions({ onSuccess: () => setAsking(null) }));
  const off = useWrite(deskQuery.till.clockOff.mutationOptions());

  const here = mine !== null && mine.jobId === job.id ? mine : null;
  // Whoever is still on a job that was handed over can only stop.
  const over = job.state === 'handed-over';
  if (over && here === null) return null;
  const elsewhere = mine !== null && here === null ? mine : null;
  const clockOn = (workKind: string) =>
    on.mutate({ by, staffId: by, jobId: job.id, workKind, goesOver: mine !== null });
  const begin = (workKind: string) => {
    on.reset();
    off.reset();
    if (elsewhere === null) clockOn(workKind);
    else setAsking(workKind);
  };
  const choices = [...kinds, ''].filter((kind) => here === null || kind !== here.workKind);

  return (
    <>
      <Group gap={4} wrap="nowrap">
        {here !== null && (
          <Button
            variant="light"
            leftSection={<IconClockPause size={20} aria-hidden />}
            loading={off.isPending}
            disabled={here.forgotten !== null}
            onClick={() => {
              on.reset();
              off.mutate({ by, entryId: here.id });
            }}
          >
            Clock off
            <Text span inherit ff="inherit" ms={6} style={{ fontVariantNumeric: 'tabular-nums' }}>
              {here.minutes === 0 ? '0:00' : lastedFigure(here.minutes)}
            </Text>
          </Button>
        )}
        {here === null && kinds.length === 0 && (
          <Button
            variant="default"
            leftSection={<IconClockPlay size={20} aria-hidden />}
            loading={on.isPending}
            onClick={() => begin('')}
          >
            Clock on
          </Button>
        )}
        {kinds.length > 0 && !over && (
          <Menu position="bottom-end" width={240}>
            <Menu.Target>
              <Button
                variant="default"
                px={here === null ? undefined : 'xs'}
                leftSection={here === null && <IconClockPlay size={20} aria-hidden />}
                rightSection={<IconChevronDown size={18} aria-hidden />}
                loading={on.isPending}
              >
                {here === null ? 'Clock on' : workKindLabel(here.workKind)}
              </Button>
            </Menu.Target>
            <Menu.Dropdown aria-label={here === null ? 'Clock on for' : 'Go over to'}>
              {choices.map((kind) => (
                <Menu.Item key={kind} onClick={() => begin(kind)}>
                  {workKindLabel(kind)}
                </Menu.Item>
              ))}
            </Menu.Dropdown>
          </Menu>
        )}
      </Group>
      {asking === null && (
        <ClockRefusal
          error={on.error ?? off.error}
          onClose={() => {
            on.reset();
            off.reset();
          }}
        />
      )}
      {asking !== null && elsewhere !== null && (
        <Modal opened onClose={() => setAsking(null)} title="Your clock runs on another job">
          <Stack gap="sm">
            <Text>
              {elsewhere.jobCode}, {elsewhere.machine}, since {format.time(elsewhere.startedAt)} (
              {lastedWords(elsewhere.minutes)}). Nobody works on two jobs at once.
            </Text>
            <RefusalAlert error={on.error} />
            <Group justify="flex-end" gap="xs">
              <Button variant="default" onClick={() => setAsking(null)}>
                Stay there
              </Button>
              <Button data-autofocus loading={on.isPending} onClick={() => clockOn(asking)}>
                Go over to {job.code}
              </Button>
            </Group>
          </Stack>
        </Modal>
      )}
    </>
  );
}

/** Why nobody was clocked on or off. */
function ClockRefusal({ error, onClose }: { error: unknown; onClose: () => void }) {
  if (error === null || error === undefined) return null;
  return (
    <Modal opened onClose={onClose} title="The clock stays as it is">
      <RefusalAlert error={error} mb="md" />
      <Group justify="flex-end">
        <Button data-autofocus onClick={onClose}>
          Close
        </Button>
      </Group>
    </Modal>
  );
}
