import { Button, Group, Stack, Text } from '@mantine/core';
import { IconFolderOpen, IconPrinter, IconUserPlus } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { Link } from 'react-router';
import type { PaperId } from '../../../shared/contract/ids.ts';
import type { desk } from '../../common/desk.ts';
import { Page } from '../../common/page.tsx';
import { printPaperFile } from '../../common/paper-file.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import classes from './take-in.module.css';

export type Taken = Awaited<ReturnType<typeof desk.counter.takeIn>>;

interface TakenPanelProps {
  taken: Taken;
  onNext: () => void;
}

/** The machine is in: the code to call it by, and the two papers that go with it. */
export function TakenPanel({ taken, onNext }: TakenPanelProps) {
  const first = useRef<HTMLButtonElement>(null);
  const print = useMutation({ mutationFn: (id: PaperId) => printPaperFile(id) });
  useEffect(() => first.current?.focus(), []);
  return (
    <Page
      title="Taken in"
      description="Give the customer the claim ticket; wire the tag to the machine."
    >
      <Stack align="flex-start" gap="lg">
        <div role="status">
          <Text fw={600}>Job</Text>
          <div className={classes.code}>{taken.code}</div>
        </div>
        <Group gap="sm">
          <Button
            ref={first}
            size="md"
            leftSection={<IconPrinter size={20} aria-hidden />}
            onClick={() => print.mutate(taken.claimTicket.id)}
          >
            Print claim ticket
          </Button>
          <Button
            size="md"
            leftSection={<IconPrinter size={20} aria-hidden />}
            onClick={() => print.mutate(taken.tag.id)}
          >
            Print tag
          </Button>
          <Button
            size="md"
            variant="default"
            leftSection={<IconUserPlus size={20} aria-hidden />}
            onClick={onNext}
          >
            Next customer
          </Button>
          <Button
            size="md"
            variant="default"
            component={Link}
            to={`/job/${taken.code}`}
            leftSection={<IconFolderOpen size={20} aria-hidden />}
          >
            Open job
          </Button>
        </Group>
        <RefusalAlert error={print.error} />
      </Stack>
    </Page>
  );
}
