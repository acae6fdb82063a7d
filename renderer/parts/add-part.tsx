import { Anchor, Button, Group, Modal, SimpleGrid, Stack, Text, TextInput } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { Link } from 'react-router';
import { z } from 'zod';
import { PartId } from '../../shared/contract/ids.ts';
import type { Part } from '../../shared/contract/parts/index.ts';
import { deskQuery } from '../common/desk.ts';
import { MoneyInput } from '../common/money-input.tsx';
import { fieldErrors, RefusalAlert, refusalOf } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';
import { MarginText } from './margin-text.tsx';
import { PartIdentity } from './part-identity.tsx';
import { QuantityInput } from './quantity-input.tsx';

interface AddPartProps {
  opened: boolean;
  /** What was searched for in vain. */
  suggestedNumber: string;
  onClose: () => void;
  onAdded: (part: Part) => void;
}

const EMPTY = {
  number: '',
  description: '',
  bin: '',
  unit: 'pc',
  barcode: '',
  supplier: '',
  price: null as number | null,
  cost: null as number | null,
  reorderPoint: null as number | null,
};
type Words = 'number' | 'description' | 'bin' | 'unit' | 'barcode' | 'supplier';

const Taken = z.object({ partId: PartId });

/** A sheet for a new part; what is typed stays when it is closed. */
export function AddPart({ opened, suggestedNumber, onClose, onAdded }: AddPartProps) {
  return (
    <Modal opened={opened} onClose={onClose} title="Add a part" size="lg">
      <AddPartForm suggestedNumber={suggestedNumber} onAdded={onAdded} />
    </Modal>
  );
}

function AddPartForm({
  suggestedNumber,
  onAdded,
}: Pick<AddPartProps, 'suggestedNumber' | 'onAdded'>) {
  const by = useBy();
  const [part, setPart, clear] = useDraft('part.new', { ...EMPTY, number: suggestedNumber });
  const [asked, setAsked] = useState(false);
  const add = useWrite(
    deskQuery.parts.add.mutationOptions({
      onSuccess: (added) => {
        clear();
        onAdded(added);
      },
    }),
  );
  const errors = fieldErrors(add.error);
  const missing: Record<string, string | undefined> = asked
    ? {
        number: part.number.trim() === '' ? 'A part needs a number.' : undefined,
        description: part.description.trim() === '' ? 'Say what it is.' : undefined,
        price: part.price === null ? 'Say what it sells for.' : undefined,
      }
    : {};
  const words = (name: Words) => ({
    value: part[name],
    error: missing[name] ?? errors[name],
    autoComplete: 'off',
    onChange: (event: { currentTarget: HTMLInputElement }) => {
      const value = event.currentTarget.value;
      setPart((draft) => ({ ...draft, [name]: value }));
    },
  });

  const send = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (part.price === null || part.number.trim() === '' || part.description.trim() === '') return;
    add.mutate({
      by,
      ...part,
      price: part.price,
      cost: part.cost ?? 0,
      reorderPoint: part.reorderPoint ?? 0,
    });
  };

  return (
    <form onSubmit={send} noValidate aria-label="Add a part">
      <Stack gap="sm">
        <PartIdentity numberHint="As it stands on the bag" words={words} />
        <SimpleGrid cols={{ base: 1, xs: 3 }} spacing="sm">
          <MoneyInput
            label="Price"
            required
            value={part.price}
            error={missing.price ?? errors.price}
            onChange={(price) => setPart((draft) => ({ ...draft, price }))}
          />
          <MoneyInput
            label="Cost"
            value={part.cost}
            error={errors.cost}
            onChange={(cost) => setPart((draft) => ({ ...draft, cost }))}
          />
          <TextInput label="Unit" maxLength={12} {...words('unit')} />
        </SimpleGrid>
        <MarginText price={part.price} cost={part.cost} />
        <SimpleGrid cols={{ base: 1, xs: 3 }} spacing="sm">
          <TextInput label="Bin" maxLength={40} {...words('bin')} />
          <TextInput label="Supplier" maxLength={120} {...words('supplier')} />
          <QuantityInput
            label="Reorder at"
            unit={part.unit}
            value={part.reorderPoint}
            error={errors.reorderPoint}
            onChange={(reorderPoint) => setPart((draft) => ({ ...draft, reorderPoint }))}
          />
        </SimpleGrid>
        <AddRefusal error={add.error} />
        <Group justify="space-between">
          <Button variant="subtle" color="gray" onClick={clear}>
            Clear the sheet
          </Button>
          <Button type="submit" loading={add.isPending}>
            Add the part
          </Button>
        </Group>
      </Stack>
    </form>
  );
}

/** A number that is taken leads to the part that has it. */
function AddRefusal({ error }: { error: unknown }) {
  const taken = error === null ? null : Taken.safeParse(refusalOf(error).data);
  return (
    <>
      <RefusalAlert error={error} />
      {taken?.success === true && (
        <Text>
          <Anchor component={Link} to={`/part/${taken.data.partId}`}>
            Open the part with this number
          </Anchor>
        </Text>
      )}
    </>
  );
}
