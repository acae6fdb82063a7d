import { Alert, Button, Checkbox, Group, Input, Stack, Text } from '@mantine/core';
import { IconAlertTriangle, IconBook2, IconUserCheck } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { Machine } from '../../../shared/contract/counter/index.ts';
import type { TakeInDraft } from './draft.ts';
import { engineInWords, machineInWords } from './machine-in-words.ts';

interface KnownMachineProps {
  machine: Machine;
  draft: TakeInDraft;
  fault?: string;
  onForget: () => void;
  onTakeOwner: () => void;
  onChangedHands: (changed: boolean) => void;
  onTakeInAgain: (again: boolean) => void;
}

/** A machine that has been here before: nothing of it is typed again. */
export function KnownMachine(props: KnownMachineProps) {
  const { machine, draft, fault, onForget } = props;
  const engine = engineInWords(machine.engine);
  return (
    <Stack gap="xs" data-field="serial">
      <Group justify="space-between" wrap="nowrap" gap="xs" align="flex-start">
        <div>
          <Text fw={700}>{machineInWords(machine)}</Text>
          <Text size="sm">Serial {machine.serial || 'not known'}</Text>
          <Text size="sm">{engine === '' ? 'Engine not described yet' : `Engine ${engine}`}</Text>
          <Text size="xs" c="dimmed">
            <IconBook2 size={14} aria-hidden style={{ verticalAlign: '-2px' }} />{' '}
            {machine.engine.engineModelName === ''
              ? 'No entry of the spec book chosen yet'
              : `Spec book: ${machine.engine.engineModelName}`}
          </Text>
        </div>
        <Button
          variant="default"
          size="compact-sm"
          style={{ flexShrink: 0 }}
          aria-label="Change the machine"
          onClick={onForget}
        >
          Change
        </Button>
      </Group>
      {fault && <Input.Error role="alert">{fault}</Input.Error>}
      <Owner {...props} draft={draft} />
      <InTheShop {...props} />
    </Stack>
  );
}

function Owner({ machine, draft, onTakeOwner, onChangedHands }: KnownMachineProps) {
  if (draft.knownCustomer?.id === machine.customerId) return null;
  const newOwner = draft.knownCustomer?.name ?? draft.name.trim();
  return (
    <Alert role="status" variant="light" icon={<IconUserCheck aria-hidden />} p="xs">
      <Text size="sm">
        On record for{' '}
        <strong>
          <bdi>{machine.customerName}</bdi>
        </strong>
        .
      </Text>
      <Button variant="light" size="compact-sm" mt={4} onClick={onTakeOwner}>
        <span>
          <bdi>{machine.customerName}</bdi> brings it
        </span>
      </Button>
      {newOwner !== '' && (
        <Checkbox
          mt="xs"
          label={`It changed hands: ${newOwner} owns it now`}
          checked={draft.changedHands}
          onChange={(event) => onChangedHands(event.currentTarget.checked)}
        />
      )}
    </Alert>
  );
}

/** It stands in the shop already: the way to that job, or another one all the same. */
function InTheShop({ machine, draft, onTakeInAgain }: KnownMachineProps) {
  if (!machine.openJob) return null;
  return (
    <Alert
      role="status"
      variant="light"
      color="orange"
      icon={<IconAlertTriangle aria-hidden />}
      p="xs"
    >
      <Text size="sm">
        In the shop already, on job <strong>{machine.openJob}</strong>.
      </Text>
      <Button
        component={Link}
        to={`/job/${machine.openJob}`}
        variant="default"
        size="compact-sm"
        h={32}
        mt={4}
      >
        Open {machine.openJob}
      </Button>
      <Checkbox
        mt="xs"
        label="Take it in again, on another job"
        checked={draft.takeInAgain}
        onChange={(event) => onTakeInAgain(event.currentTarget.checked)}
      />
    </Alert>
  );
}
