import { Button, Group, Modal, SimpleGrid, Stack, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { Part } from '../../../shared/contract/parts/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { PartIdentity } from '../part-identity.tsx';
import { QuantityInput } from '../quantity-input.tsx';

type Words = 'number' | 'description' | 'bin' | 'unit' | 'barcode' | 'supplier';

/** What a part is and where it lies. */
export function AmendDialog({ part, onClose }: { part: Part; onClose: () => void }) {
  const by = useBy();
  const { number, description, bin, unit, barcode, supplier, packSize, reorderPoint } = part;
  const [draft, setDraft] = useState({
    number,
    description,
    bin,
    unit,
    barcode,
    supplier,
    packSize: packSize as number | null,
    reorderPoint: reorderPoint as number | null,
  });
  const amend = useWrite(deskQuery.parts.amend.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(amend.error);
  const words = (name: Words) => ({
    value: draft[name],
    error: errors[name],
    autoComplete: 'off',
    onChange: (event: { currentTarget: HTMLInputElement }) => {
      const value = event.currentTarget.value;
      setDraft((before) => ({ ...before, [name]: value }));
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    amend.mutate({
      by,
      partId: part.id,
      ...draft,
      packSize: draft.packSize ?? undefined,
      reorderPoint: draft.reorderPoint ?? 0,
    });
  };
  return (
    <Modal opened onClose={onClose} title={`Change ${part.number}`} size="lg">
      <form onSubmit={send} noValidate aria-label="Change the part">
        <Stack gap="sm">
          <PartIdentity numberHint="The one before goes on finding it" words={words} />
          <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm">
            <TextInput label="Bin" maxLength={40} {...words('bin')} />
            <TextInput label="Supplier" maxLength={120} {...words('supplier')} />
          </SimpleGrid>
          <SimpleGrid cols={{ base: 1, xs: 3 }} spacing="sm">
            <TextInput label="Unit" required maxLength={12} {...words('unit')} />
            <QuantityInput
              label="In one pack"
              unit={draft.unit}
              value={draft.packSize}
              error={errors.packSize}
              onChange={(size) => setDraft((before) => ({ ...before, packSize: size }))}
            />
            <QuantityInput
              label="Reorder at"
              unit={draft.unit}
              value={draft.reorderPoint}
              error={errors.reorderPoint}
              onChange={(point) => setDraft((before) => ({ ...before, reorderPoint: point }))}
            />
          </SimpleGrid>
          <RefusalAlert error={amend.error} brief />
          <Group justify="flex-end">
            <Button type="submit" loading={amend.isPending}>
              Save
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
