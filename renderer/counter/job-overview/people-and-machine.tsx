import { Anchor, Button, Group, Stack, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconPencil } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { MACHINE_KIND_LABELS, REACH_BY_LABELS } from '../../../shared/work/vocabulary.ts';
import { Card } from '../../common/card.tsx';
import { AmendMachine } from '../amend/amend-machine.tsx';
import { Facts } from './facts.tsx';

/** Who to call, and how they asked to be reached. */
export function CustomerCard({ job }: { job: JobDossier }) {
  const { customer } = job;
  return (
    <Card
      title="Customer"
      aside={
        <Anchor component={Link} to={`/customer/${customer.id}`} size="sm">
          All of this customer
        </Anchor>
      }
    >
      <Text fw={700} mb={4}>
        <bdi>{customer.name}</bdi>
      </Text>
      <Facts
        facts={[
          { name: 'Reach by', value: REACH_BY_LABELS[job.reachBy] },
          {
            name: 'Telephone',
            value: customer.phone && (
              <Anchor href={`tel:${customer.phoneInternational || customer.phone}`}>
                {customer.phone}
              </Anchor>
            ),
          },
          {
            name: 'E-mail',
            value: customer.email && (
              <Anchor href={`mailto:${customer.email}`}>{customer.email}</Anchor>
            ),
          },
          ...(customer.address === '' ? [] : [{ name: 'Address', value: customer.address }]),
          ...(customer.note === '' ? [] : [{ name: 'Note', value: customer.note }]),
        ]}
      />
    </Card>
  );
}

/** The machine as on its plates, and the spec book's entry that the engine is measured against. */
export function MachineCard({ job }: { job: JobDossier }) {
  const { machineDetails: machine } = job;
  const { engine } = machine;
  const [mending, dialog] = useDisclosure(false);
  return (
    <Card
      title="Machine and engine"
      aside={
        <Group gap="xs">
          <Anchor component={Link} to={`/engine/${engine.id}`} size="sm">
            Life of this engine
          </Anchor>
          <Button
            variant="default"
            size="compact-sm"
            h={32}
            aria-label="Mend what stands on the plates"
            leftSection={<IconPencil size={16} aria-hidden />}
            onClick={dialog.open}
          >
            Mend
          </Button>
        </Group>
      }
    >
      {mending && <AmendMachine machine={machine} onClose={dialog.close} />}
      <Stack gap="sm">
        <Facts
          facts={[
            { name: 'Kind', value: MACHINE_KIND_LABELS[machine.kind] },
            {
              name: 'Make and model',
              value: [machine.make, machine.model].filter(Boolean).join(' '),
            },
            { name: 'Serial', value: machine.serial },
            { name: 'Engine', value: [engine.make, engine.model].filter(Boolean).join(' ') },
            { name: 'Type code', value: engine.typeCode },
            { name: 'Engine serial', value: engine.serial },
            {
              name: 'Running hours',
              value: job.engineHours === null ? '' : `${job.engineHours} at intake`,
            },
            ...(engine.dateCode === '' ? [] : [{ name: 'Date code', value: engine.dateCode }]),
            {
              name: 'Spec book',
              value:
                engine.engineModelId === null ? (
                  <>
                    no entry chosen yet;{' '}
                    <Anchor component={Link} to="bench">
                      choose it at the bench
                    </Anchor>
                  </>
                ) : (
                  <Anchor component={Link} to={`/spec-book/${engine.engineModelId}`}>
                    {engine.engineModelName}
                  </Anchor>
                ),
            },
          ]}
        />
      </Stack>
    </Card>
  );
}
