import { Modal } from '@mantine/core';
import { useNavigate } from 'react-router';
import { deskQuery } from '../../common/desk.ts';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { CustomerForm, NO_CUSTOMER } from './customer-form.tsx';

export function AddCustomer({ opened, onClose }: { opened: boolean; onClose: () => void }) {
  return (
    <Modal opened={opened} onClose={onClose} title="Add a customer" size="40rem">
      <AddCustomerForm onClose={onClose} />
    </Modal>
  );
}

function AddCustomerForm({ onClose }: { onClose: () => void }) {
  const by = useBy();
  const navigate = useNavigate();
  const [draft, setDraft, clear] = useDraft('customer.new', NO_CUSTOMER);
  const add = useWrite(
    deskQuery.counter.addCustomer.mutationOptions({
      onSuccess: (customer) => {
        clear();
        onClose();
        void navigate(`/customer/${customer.id}`);
      },
    }),
  );
  return (
    <CustomerForm
      fields={draft}
      onChange={setDraft}
      onSubmit={() => add.mutate({ by, ...draft })}
      onCancel={() => {
        clear();
        onClose();
      }}
      error={add.error}
      sending={add.isPending}
      submitLabel="Add"
    />
  );
}
