import { useMutation } from '@tanstack/react-query';
import { useLayoutEffect, useRef } from 'react';
import type { Customer, Machine } from '../../../shared/contract/counter/index.ts';
import { desk } from '../../common/desk.ts';
import { emptyDraft, type TakeInDraft } from './draft.ts';

const { name, contact, address, note } = emptyDraft;
const { kind, machine, engine, engineModel, typeCode, engineSerial, dateCode } = emptyDraft;
const NO_CUSTOMER = { knownCustomer: null, name, contact, address, note };
const NO_MACHINE = {
  knownMachine: null,
  changedHands: false,
  takeInAgain: false,
  serial: '',
  kind,
  machine,
  engine,
  engineModel,
  typeCode,
  engineSerial,
  dateCode,
};

/** Nothing of the machine but its number has been entered, so that a known one may take its place. */
const onlyNumber = (draft: TakeInDraft): boolean =>
  draft.kind === null && draft.machine.trim() === '' && draft.engine.trim() === '';

/** Putting somebody or something that the store knows in the place of what would be typed. */
export function useKnown(draft: TakeInDraft, change: (part: Partial<TakeInDraft>) => void) {
  const refused = useRef<string | null>(null);
  // What comes back from the desk meets the page as it is then, not as it was when it was asked.
  const latest = useRef(draft);
  useLayoutEffect(() => {
    latest.current = draft;
  });

  const takeCustomer = (customer: Customer) =>
    change({ ...NO_CUSTOMER, knownCustomer: customer, reachBy: customer.reachBy });

  const owner = useMutation({
    mutationFn: (of: Machine) => desk.counter.customer({ id: of.customerId }),
    onSuccess: ({ customer }) => takeCustomer(customer),
  });

  const takeMachine = (known: Machine) => {
    change({ ...NO_MACHINE, knownMachine: known, serial: known.serial });
    // Nobody was named yet: it will be the owner who brings it.
    if (latest.current.knownCustomer === null && latest.current.name.trim() === '')
      owner.mutate(known);
  };

  return {
    takeCustomer,
    takeMachine,
    /** The number was looked up behind the back of who types: only an untouched page takes it. */
    meetMachine: (known: Machine): boolean => {
      if (refused.current === known.id || !onlyNumber(latest.current)) return false;
      takeMachine(known);
      return true;
    },
    takeOwner: () => {
      if (draft.knownMachine !== null) owner.mutate(draft.knownMachine);
    },
    forgetCustomer: () => change(NO_CUSTOMER),
    forgetMachine: () => {
      refused.current = draft.knownMachine?.id ?? null;
      change(NO_MACHINE);
    },
    error: owner.error,
  };
}
