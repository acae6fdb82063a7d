import { Modal } from '@mantine/core';
import type { Customer } from '../../../shared/contract/counter/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { CustomerForm } from './customer-form.tsx';

interface ReviseCustomerProps {
  customer: Customer;
  opened: boolean;
  onClose: () => void;
}

export function ReviseCustomer({ customer, opened, onClose }: ReviseCustomerProps) {
  return (
    <Modal opened={opened} onClose={onClose} title={`Edit ${customer.name}`} size="40rem">
      <ReviseCustomerForm customer={customer} onClose={onClose} />
    </Modal>
  );
}

function ReviseCustomerForm({ customer, onClose }: Omit<ReviseCustomerProps, 'opened'>) {
  const by = useBy();
  const { name, phone, email, address, reachBy, note } = customer;
  const [draft, setDraft, clear] = useDraft(`customer.${customer.id}`, {
    name,
    phone,
    email,
    address,
    reachBy,
    note,
  });
  const revise = useWrite(
    deskQuery.counter.reviseCustomer.mutationOptions({
      onSuccess: () => {
        clear();
        onClose();
      },
    }),
  );
  return (
    <CustomerForm
      fields={draft}
      onChange={setDraft}
      onSubmit={() => revise.mutate({ by, id: customer.id, ...draft })}
      onCancel={() => {
        clear();
        onClose();
      }}
      error={revise.error}
      sending={revise.isPending}
      submitLabel="Save"
    />
  );
}
