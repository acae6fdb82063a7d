import { notifications } from '@mantine/notifications';
import type { SyntheticEvent } from 'react';
import type { TillRules } from '../../../shared/contract/till/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';

/** The shop's rules as a form; what nobody typed goes along as it stands. */
export function useRulesForm(standing: TillRules) {
  const by = useBy();
  const [draft, setDraft, clear] = useDraft<Partial<TillRules>>('office.prices', {});
  const fields: TillRules = { ...standing, ...draft };
  const save = useWrite(
    deskQuery.till.setRules.mutationOptions({
      onSuccess: () => {
        clear();
        notifications.show({
          color: 'green',
          message: 'Saved. Estimates written from now on go by it.',
        });
      },
    }),
  );
  return {
    fields,
    changed: JSON.stringify(fields) !== JSON.stringify(standing),
    save,
    errors: fieldErrors(save.error),
    set: (change: Partial<TillRules>) => setDraft((before) => ({ ...before, ...change })),
    reset: () => {
      clear();
      save.reset();
    },
    submit: (event: SyntheticEvent) => {
      event.preventDefault();
      save.mutate({ by, rules: fields });
    },
  };
}

export type RulesForm = ReturnType<typeof useRulesForm>;
