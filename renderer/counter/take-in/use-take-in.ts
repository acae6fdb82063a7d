import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { z } from 'zod';
import { JobCode } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import type { Faults, TakeInDraft, TakeInField } from './draft.ts';
import { FIELD_ORDER, focusField, focusTakeIn } from './field-order.ts';
import { faultsOf, hasField, stillWanted, takeInCall } from './take-in-call.ts';
import type { Taken } from './taken-panel.tsx';
import type { usePlates } from './use-plates.ts';

/** What stands above the customer's signature: when it changes, the signature is no longer worth anything. */
const SIGNED_FOR: readonly TakeInField[] = [
  'knownCustomer',
  'name',
  'knownMachine',
  'complaint',
  'condition',
  'leftWith',
  'diagnosisFee',
  'spendingLimit',
  'deposit',
  'promisedFor',
];

interface TakeInOptions {
  draft: TakeInDraft;
  setDraft: (next: (draft: TakeInDraft) => TakeInDraft) => void;
  plates: ReturnType<typeof usePlates>;
  form: RefObject<HTMLFormElement | null>;
  onTaken: (taken: Taken) => void;
}

/** Refusals that are about one field of the page. */
const AT_A_FIELD: ReadonlyMap<string, TakeInField> = new Map([
  ['PROMISED_IN_THE_PAST', 'promisedFor'],
  ['OWNED_BY_ANOTHER', 'serial'],
  ['ALREADY_IN_THE_SHOP', 'serial'],
]);

const InTheShop = z.object({ jobCode: JobCode });

/** Whether a refusal is told beside the machine, at the fields themselves, or has to be told as a whole. */
function shownAt(error: unknown): 'nowhere' | 'machine' | 'fields' | 'whole' {
  if (error === null) return 'nowhere';
  const { code, issues } = refusalOf(error);
  if (code === 'SERIAL_TAKEN') return 'machine';
  const atFields = issues.length > 0 && issues.every((issue) => hasField(issue.path));
  return AT_A_FIELD.has(code) || atFields ? 'fields' : 'whole';
}

/** Changing the draft, sending it, and bringing what the desk says back to the fields. */
export function useTakeIn({ draft, setDraft, plates, form, onTaken }: TakeInOptions) {
  const by = useBy();
  const [faults, setFaults] = useState<Faults>({});
  const [signatureLapsed, setSignatureLapsed] = useState(false);

  const showFaults = (found: Faults) => {
    setFaults(found);
    const first = FIELD_ORDER.find((field) => found[field] !== undefined);
    // A field that is opened by its fault is there only after the page has been drawn again.
    if (first !== undefined) setTimeout(() => focusField(form.current, first));
  };

  const write = useWrite(
    deskQuery.counter.takeIn.mutationOptions({
      onSuccess: onTaken,
      onError: (error) => {
        const { code, message, issues, data } = refusalOf(error);
        const field = AT_A_FIELD.get(code);
        const inTheShop = InTheShop.safeParse(data);
        // It was taken in at another station since it was chosen here: the page shows that job now.
        if (inTheShop.success)
          setDraft((before) => ({
            ...before,
            knownMachine: before.knownMachine && {
              ...before.knownMachine,
              openJob: inTheShop.data.jobCode,
            },
          }));
        if (field !== undefined) showFaults({ [field]: message });
        else if (code === 'SERIAL_TAKEN') showFaults({ serial: 'Known already: see below.' });
        else showFaults(faultsOf(issues));
      },
    }),
  );

  // The field was left when it was sent: without the focus in the form no key would try again. The button
  // can have it only once it is drawn as no longer busy.
  const { error } = write;
  useEffect(() => {
    const isToldAsWhole = shownAt(error) === 'whole' && refusalOf(error).issues.length === 0;
    if (isToldAsWhole) focusTakeIn(form.current);
  }, [error, form]);

  const change = (part: Partial<TakeInDraft>) => {
    const touched = Object.keys(part) as TakeInField[];
    const unsigned =
      draft.signature !== null && touched.some((field) => SIGNED_FOR.includes(field));
    if ('signature' in part) setSignatureLapsed(false);
    else if (unsigned) setSignatureLapsed(true);
    setDraft((before) => ({ ...before, ...(unsigned ? { signature: null } : {}), ...part }));
    setFaults((before) =>
      Object.fromEntries(Object.entries(before).filter(([field]) => !(field in part))),
    );
  };

  const send = () => {
    const { current } = form;
    const unreadable = [...(current?.querySelectorAll('input') ?? [])].find(
      (input) => input.validity.customError,
    );
    const wanted = stillWanted(draft);
    const { signature } = draft;
    if (unreadable !== undefined) unreadable.focus();
    else if (Object.keys(wanted).length > 0 || signature === null) showFaults(wanted);
    else {
      setFaults({});
      write.mutate(
        takeInCall({ ...draft, signature, engineModel: plates.engineModel }, by, {
          machine: plates.machineMakes,
          engine: plates.engineMakes,
        }),
      );
    }
  };

  const latest = useRef(send);
  useLayoutEffect(() => {
    latest.current = send;
  });

  return {
    change,
    faults,
    signatureLapsed,
    busy: write.isPending,
    error,
    shown: shownAt(error),
    reset: () => {
      write.reset();
      setFaults({});
    },
    /** Leaves the field first, as a click on the button does: what is half chosen is then chosen. */
    start: () => {
      if (write.isPending) return;
      form.current?.querySelector<HTMLElement>('[data-take-in]')?.focus();
      setTimeout(() => latest.current());
    },
  };
}
