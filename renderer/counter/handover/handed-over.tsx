import { Button, Group, Stack, Text, Title } from '@mantine/core';
import { IconFingerprint, IconPrinter } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { PaperId } from '../../../shared/contract/ids.ts';
import { signedWords } from '../../../shared/work/typed-name.ts';
import { useFormat } from '../../common/format.ts';
import { PaperButton } from '../../common/paper-button.tsx';
import { printPaperFile } from '../../common/paper-file.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import classes from './handover.module.css';

/** The machine went home: the signed work order, and what its fingerprint is good for. */
export function HandedOver({ job }: { job: JobDossier }) {
  const format = useFormat();
  const first = useRef<HTMLButtonElement>(null);
  const print = useMutation({ mutationFn: (id: PaperId) => printPaperFile(id) });
  useEffect(() => first.current?.focus(), []);
  const paper = job.papers.findLast(({ kind }) => kind === 'work-order');
  if (paper === undefined)
    return <Text>The machine was handed over; no work order is kept for it.</Text>;
  return (
    <Stack gap="lg" align="flex-start">
      <div role="status">
        <Title order={2} size="h3">
          Handed over to <bdi>{job.customerName}</bdi>
        </Title>
        <Text>
          {format.instant(paper.issuedAt)}, {paper.issuedBy}. Work order {paper.number} is signed.
        </Text>
        {job.handoverSigned !== null && (
          <>
            <Text size="sm">Customer: {signedWords(job.handoverSigned.customer)}</Text>
            <Text size="sm">For the shop: {signedWords(job.handoverSigned.shop)}</Text>
          </>
        )}
      </div>
      <Group gap="sm">
        <Button
          ref={first}
          size="md"
          leftSection={<IconPrinter size={20} aria-hidden />}
          loading={print.isPending}
          onClick={() => print.mutate(paper.id)}
        >
          Print the work order
        </Button>
        <PaperButton paper={paper} />
      </Group>
      <RefusalAlert error={print.error} />
      <section className={classes.fingerprint} aria-labelledby="fingerprint">
        <Title order={3} size="h5" id="fingerprint">
          <IconFingerprint size={20} aria-hidden style={{ verticalAlign: '-4px' }} /> Fingerprint
        </Title>
        <Text ff="monospace" size="sm" my={4} style={{ overflowWrap: 'anywhere' }}>
          {paper.fingerprint}
        </Text>
        <Text size="sm">
          It is taken (SHA-256) of everything that both signed, which is attached to the PDF, and
          stands on the paper too. If a single figure were changed, another one would come out: so
          anybody can hold the customer’s copy and the shop’s against it a year from now.
        </Text>
      </section>
      <section aria-labelledby="work-done">
        <Title order={3} size="h5" id="work-done">
          What was done
        </Title>
        <Text style={{ whiteSpace: 'pre-line' }}>{job.workDone}</Text>
      </section>
      {job.passedOver.length > 0 && (
        <section aria-labelledby="passed-over">
          <Title order={3} size="h5" id="passed-over">
            Handed over with
          </Title>
          <ul className={classes.matters}>
            {job.passedOver.map(({ matter, says, items, reason }) => (
              <li key={matter}>
                <Text>
                  {says} {items.join('; ')}
                </Text>
                <Text size="sm">Reason: {reason}</Text>
              </li>
            ))}
          </ul>
        </section>
      )}
    </Stack>
  );
}
