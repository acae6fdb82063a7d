import { Alert, Button } from '@mantine/core';
import { IconEngine } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import { z } from 'zod';
import type { Machine } from '../../../shared/contract/counter/index.ts';
import { MachineId } from '../../../shared/contract/ids.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { desk } from '../../common/desk.ts';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';

const Owned = z.object({ machineId: MachineId, customerName: z.string() });

interface SerialTakenProps {
  error: unknown;
  serial: string;
  onUse: (machine: Machine) => void;
}

/** The number belongs to a machine in the store: offers that machine in place of the typed one. */
export function SerialTaken({ error, serial, onUse }: SerialTakenProps) {
  const { message, data } = refusalOf(error);
  const owned = Owned.safeParse(data);
  const use = useMutation({
    mutationFn: () => desk.counter.findMachines({ text: foldNumber(serial), limit: 500 }),
    onSuccess: (machines) => {
      const known = machines.find(({ id }) => owned.success && id === owned.data.machineId);
      if (known !== undefined) onUse(known);
    },
  });
  return (
    <Alert role="alert" color="yellow" icon={<IconEngine aria-hidden />} title={message}>
      {owned.success && (
        <Button variant="default" loading={use.isPending} onClick={() => use.mutate()}>
          <span>
            Use the machine of <bdi>{owned.data.customerName}</bdi>
          </span>
        </Button>
      )}
      <RefusalAlert error={use.error} />
    </Alert>
  );
}
