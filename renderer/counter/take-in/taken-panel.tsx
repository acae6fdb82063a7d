import { Anchor, Button, Group, Stack, Text } from '@mantine/core';
import { IconFolderOpen, IconPrinter, IconUserPlus } from '@tabler/icons-react';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { Link } from 'react-router';
import type { PaperId } from '../../../shared/contract/ids.ts';
import { type desk, deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { Page } from '../../common/page.tsx';
import { printPaperFile } from '../../common/paper-file.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useMoney } from '../../common/shop.tsx';
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
          <TakenInWords code={taken.code} />
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

/** Read back from the store: what was taken in, and the deposit that is still to be taken. */
function TakenInWords({ code }: { code: Taken['code'] }) {
  const format = useFormat();
  const money = useMoney();
  const { data: job } = useQuery(deskQuery.counter.job.queryOptions({ input: { code } }));
  if (job === undefined) return null;
  const facts = [
    job.customerName,
    job.machine,
    job.promisedFor === null ? 'no date promised' : `promised for ${format.date(job.promisedFor)}`,
  ];
  return (
    <>
      <Text size="lg">{facts.join(' · ')}</Text>
      {job.depositAgreed !== null && job.depositAgreed > 0 && (
        <Text mt="xs">
          A deposit of {money(job.depositAgreed)} was agreed:{' '}
          <Anchor component={Link} to={`/job/${code}/till#payment`}>
            take it at the till
          </Anchor>
          .
        </Text>
      )}
    </>
  );
}
