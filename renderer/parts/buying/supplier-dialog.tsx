import {
  Button,
  Group,
  Modal,
  NumberInput,
  SimpleGrid,
  Stack,
  Text,
  Textarea,
  TextInput,
} from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import type { SyntheticEvent } from 'react';
import type { SupplierId } from '../../../shared/contract/ids.ts';
import type { Supplier } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';

const DAY = 1000;
const TENTH = 100;

const NEW = {
  name: '',
  accountNumber: '',
  phone: '',
  email: '',
  address: '',
  note: '',
  leadDays: 7,
  leadDaysSpread: 0,
  minimumOrder: 0,
  carriage: 0,
  freeCarriageFrom: null as number | null,
};
type Words = 'name' | 'accountNumber' | 'phone' | 'email' | 'address' | 'note';

interface SupplierDialogProps {
  /** Null for a new one. */
  supplier: Supplier | null;
  /** For a new one: what the parts call them. */
  suggestedName?: string;
  onClose: () => void;
}

const kept = (supplier: Supplier | null, suggestedName: string): typeof NEW => {
  if (supplier === null) return { ...NEW, name: suggestedName };
  const { id: _id, ...facts } = supplier;
  return facts;
};

/** Who the shop buys from, and on what terms. */
export function SupplierDialog({ supplier, suggestedName = '', onClose }: SupplierDialogProps) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft(
    `supplier.${supplier?.id ?? `new ${suggestedName}`}`,
    kept(supplier, suggestedName),
  );
  const set = (change: Partial<typeof draft>) => setDraft((before) => ({ ...before, ...change }));
  const done = () => {
    clear();
    onClose();
  };
  const add = useWrite(deskQuery.parts.addSupplier.mutationOptions({ onSuccess: done }));
  const revise = useWrite(deskQuery.parts.reviseSupplier.mutationOptions({ onSuccess: done }));
  const write = supplier === null ? add : revise;
  const errors = fieldErrors(write.error);
  const words = (name: Words) => ({
    value: draft[name],
    error: errors[name],
    autoComplete: 'off',
    onChange: (event: { currentTarget: { value: string } }) =>
      set({ [name]: event.currentTarget.value }),
  });
  const send = (event: SyntheticEvent) => {
    event.preventDefault();
    if (supplier === null) add.mutate({ by, ...draft });
    else revise.mutate({ by, supplierId: supplier.id, ...draft });
  };
  return (
    <Modal
      opened
      onClose={onClose}
      size="lg"
      title={supplier === null ? 'Add a supplier' : supplier.name}
    >
      <form onSubmit={send}>
        <Stack gap="sm">
          <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm">
            <TextInput label="Name" required data-autofocus maxLength={120} {...words('name')} />
            <TextInput label="Our account with them" maxLength={60} {...words('accountNumber')} />
            <TextInput label="Telephone" maxLength={60} {...words('phone')} />
            <TextInput label="E-mail" maxLength={200} {...words('email')} />
          </SimpleGrid>
          <Textarea label="Address" autosize minRows={2} maxLength={400} {...words('address')} />
          <SimpleGrid cols={{ base: 1, xs: 2 }} spacing="sm">
            <NumberInput
              label="Days from order to shelf"
              min={0}
              max={730}
              allowDecimal={false}
              value={draft.leadDays}
              error={errors.leadDays}
              onChange={(days) => set({ leadDays: Number(days) || 0 })}
            />
            <NumberInput
              label="Give or take, days"
              description="Standard deviation; 0 when it never strays"
              inputWrapperOrder={['label', 'input', 'description', 'error']}
              min={0}
              max={730}
              decimalScale={1}
              value={draft.leadDaysSpread / DAY}
              error={errors.leadDaysSpread}
              onChange={(days) => set({ leadDaysSpread: Math.round((Number(days) || 0) * DAY) })}
            />
          </SimpleGrid>
          {supplier !== null && (
            <SeenLead
              supplierId={supplier.id}
              onTake={(leadDays, leadDaysSpread) => set({ leadDays, leadDaysSpread })}
            />
          )}
          <SimpleGrid cols={{ base: 1, xs: 3 }} spacing="sm">
            <MoneyInput
              label="Smallest order"
              value={draft.minimumOrder}
              error={errors.minimumOrder}
              onChange={(minor) => set({ minimumOrder: minor ?? 0 })}
            />
            <MoneyInput
              label="Carriage"
              value={draft.carriage}
              error={errors.carriage}
              onChange={(minor) => set({ carriage: minor ?? 0 })}
            />
            <MoneyInput
              label="Free carriage from"
              value={draft.freeCarriageFrom}
              error={errors.freeCarriageFrom}
              onChange={(minor) => set({ freeCarriageFrom: minor })}
            />
          </SimpleGrid>
          <Textarea label="Note" autosize minRows={2} maxLength={1000} {...words('note')} />
          <RefusalAlert error={write.error} />
          <Group justify="flex-end">
            <Button variant="default" onClick={done}>
              Leave it as it was
            </Button>
            <Button type="submit" loading={write.isPending}>
              {supplier === null ? 'Add the supplier' : 'Save the supplier'}
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}

/** How long they really took, and the way to go by that. */
function SeenLead(props: {
  supplierId: SupplierId;
  onTake: (leadDays: number, leadDaysSpread: number) => void;
}) {
  const { locale } = useShop();
  const { data: lead } = useQuery(
    deskQuery.parts.supplierLead.queryOptions({ input: { supplierId: props.supplierId } }),
  );
  if (lead === undefined || lead === null) return null;
  const tenths = (thousandths: number) =>
    formatQuantity(Math.round(thousandths / TENTH) * TENTH, locale);
  return (
    <Group gap="sm">
      <Text size="sm">
        {lead.lines} lines that came in took {tenths(lead.days)} days, give or take{' '}
        {tenths(lead.spread)}.
      </Text>
      <Button
        variant="subtle"
        size="sm"
        onClick={() =>
          props.onTake(Math.round(lead.days / DAY), Math.round(lead.spread / TENTH) * TENTH)
        }
      >
        Go by that
      </Button>
    </Group>
  );
}
