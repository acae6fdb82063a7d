import { Button, Group } from '@mantine/core';

interface SaveOrCancelProps {
  saving: boolean;
  disabled?: boolean;
  onCancel: () => void;
}

/** The foot of a dialog that mends something. */
export function SaveOrCancel({ saving, disabled, onCancel }: SaveOrCancelProps) {
  return (
    <Group justify="flex-end" gap="xs">
      <Button variant="default" onClick={onCancel}>
        Cancel
      </Button>
      <Button type="submit" loading={saving} disabled={disabled}>
        Save
      </Button>
    </Group>
  );
}
