import { useEffect } from 'react';
import { useSearchParams } from 'react-router';
import { CustomerId, MachineId } from '../../../shared/contract/ids.ts';
import { desk } from '../../common/desk.ts';
import type { TakeInDraft } from './draft.ts';

type SetDraft = (next: (draft: TakeInDraft) => TakeInDraft) => void;

/** `/take-in?customer=…&machine=…`: a customer's page sends its customer, and a machine of theirs, along. */
export function usePrefill(setDraft: SetDraft): void {
  const [search, setSearch] = useSearchParams();
  const customer = CustomerId.safeParse(search.get('customer'));
  const machine = MachineId.safeParse(search.get('machine'));
  const customerId = customer.success ? customer.data : null;
  const machineId = machine.success ? machine.data : null;
  useEffect(() => {
    if (customerId === null) return;
    let left = false;
    desk.counter
      .customer({ id: customerId })
      .then((found) => {
        if (left) return;
        setDraft((draft) => ({
          ...draft,
          knownCustomer: found.customer,
          reachBy: found.customer.reachBy,
          knownMachine: found.machines.find(({ id }) => id === machineId) ?? draft.knownMachine,
        }));
        setSearch({}, { replace: true });
      })
      // Without the desk the page says so itself; the fields can still be filled by hand.
      .catch(() => undefined);
    return () => {
      left = true;
    };
  }, [customerId, machineId, setDraft, setSearch]);
}
