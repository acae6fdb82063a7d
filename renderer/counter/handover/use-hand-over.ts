import { useQueryClient } from '@tanstack/react-query';
import { type RefObject, useLayoutEffect, useRef, useState } from 'react';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import type { Account } from '../../../shared/contract/till/index.ts';
import type { HandoverMatter } from '../../../shared/work/counter/handover-matters.ts';
import { deskQuery } from '../../common/desk.ts';
import { refusalOf } from '../../common/refusal.tsx';
import { signatureInput } from '../../common/signature-field.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import {
  changed,
  emptyHandover,
  type HandoverDraft,
  type HandoverFaults,
  reasonsFor,
  stillWanted,
} from './draft.ts';
import { owedNow } from './owed-now.ts';

interface HandOverOptions {
  job: JobDossier;
  account: Account;
  matters: readonly HandoverMatter[];
  form: RefObject<HTMLFormElement | null>;
}

/** The draft of a handover, and sending it. */
export function useHandOver({ job, account, matters, form }: HandOverOptions) {
  const by = useBy();
  const client = useQueryClient();
  const [draft, setDraft, clear] = useDraft(`handover.${job.code}`, emptyHandover);
  const [faults, setFaults] = useState<HandoverFaults>({});
  const [lapsed, setLapsed] = useState(false);

  const showFaults = (found: HandoverFaults) => {
    setFaults(found);
    const [first] = Object.keys(found);
    form.current?.querySelector<HTMLElement>(atFault(first))?.focus();
  };

  const write = useWrite(
    deskQuery.counter.handOver.mutationOptions({
      onSuccess: ({ job: gone }) => {
        // At once: an emptied form would look as if what was signed were lost.
        client.setQueryData(deskQuery.counter.job.queryKey({ input: { code: job.code } }), gone);
        clear();
      },
      onError: (error) => {
        const { code, issues } = refusalOf(error);
        // Something came to it meanwhile: the list says what, as soon as it is read again.
        if (code === 'NOT_SETTLED') return;
        showFaults(
          Object.fromEntries(issues.map(({ path, message: says }) => [path.split('.')[0], says])),
        );
      },
    }),
  );

  const send = () => {
    const { customerSignature, shopSignature, reasons: _reasons, ...written } = draft;
    const passedOver = reasonsFor(draft, matters);
    const wanted = stillWanted(draft, matters, owedNow(account));
    const unreadable = [...(form.current?.querySelectorAll('input') ?? [])].find(
      (input) => input.validity.customError,
    );
    if (unreadable !== undefined) unreadable.focus();
    else if (Object.keys(wanted).length > 0 || !customerSignature || !shopSignature)
      showFaults(wanted);
    else
      write.mutate({
        by,
        jobId: job.id,
        ...written,
        passedOver,
        customerSignature: signatureInput(customerSignature),
        shopSignature: signatureInput(shopSignature),
      });
  };
  const latest = useRef(send);
  useLayoutEffect(() => {
    latest.current = send;
  });

  return {
    draft,
    faults,
    lapsed,
    busy: write.isPending,
    error: write.error,
    change: (part: Partial<HandoverDraft>) => {
      const next = changed(draft, part);
      const signed = draft.customerSignature !== null || draft.shopSignature !== null;
      const signing = 'customerSignature' in part || 'shopSignature' in part;
      setLapsed(!signing && (lapsed || signed));
      setDraft(next);
      setFaults((before) =>
        Object.fromEntries(
          Object.entries(before).filter(
            ([field]) => !(field in part) && !(field in (part.reasons ?? {})),
          ),
        ),
      );
    },
    start: () => {
      if (!write.isPending) setTimeout(() => latest.current());
    },
  };
}

/** The field of a fault, or the press that settles the matter. */
const atFault = (field: string | undefined): string =>
  `[data-matter="${field}"] [data-settles], [data-field="${field}"]:is(input, textarea), [data-field="${field}"] :is(input, textarea)`;
