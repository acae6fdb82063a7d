import { Anchor, Button, Group, Text, VisuallyHidden } from '@mantine/core';
import { IconPencil } from '@tabler/icons-react';
import { useState } from 'react';
import { Link } from 'react-router';
import type { Machine } from '../../../shared/contract/counter/index.ts';
import { MACHINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { AmendMachine } from '../amend/amend-machine.tsx';
import classes from './customers.module.css';

const joined = (...words: string[]): string => words.filter((word) => word !== '').join(' ');

/** Machines with their engines, each by what stands on its plate. */
export function MachineList({ machines }: { machines: readonly Machine[] }) {
  const [mending, setMending] = useState<Machine | null>(null);
  if (machines.length === 0)
    return (
      <Text c="dimmed" size="sm" px="md" pb="md">
        None yet: a machine is added as it is taken in.
      </Text>
    );
  return (
    <>
      {mending !== null && (
        <AmendMachine key={mending.id} machine={mending} onClose={() => setMending(null)} />
      )}
      <ul className={classes.machines}>
        {machines.map((machine) => (
          <li key={machine.id}>
            <span className={classes.machine}>
              {joined(MACHINE_KIND_LABELS[machine.kind], machine.make, machine.model)}
            </span>
            <span className={classes.small}>
              {machine.serial === '' ? 'No serial number' : `Serial ${machine.serial}`}
            </span>
            <span className={classes.small}>{engineWords(machine.engine)}</span>
            <Group justify="space-between" gap="xs">
              <Anchor component={Link} to={`/engine/${machine.engine.id}`} size="sm">
                Life of this engine
                <VisuallyHidden>: {engineWords(machine.engine)}</VisuallyHidden>
              </Anchor>
              <Button
                variant="default"
                size="compact-sm"
                h={32}
                aria-label={`Mend the plates of ${joined(MACHINE_KIND_LABELS[machine.kind], machine.make, machine.model)}`}
                leftSection={<IconPencil size={16} aria-hidden />}
                onClick={() => setMending(machine)}
              >
                Mend
              </Button>
            </Group>
          </li>
        ))}
      </ul>
    </>
  );
}

function engineWords(engine: Machine['engine']): string {
  const name = joined(engine.make, engine.model, engine.typeCode);
  if (name === '' && engine.serial === '') return 'Engine not identified';
  return `Engine ${joined(name, engine.serial === '' ? '' : `no. ${engine.serial}`)}`;
}
