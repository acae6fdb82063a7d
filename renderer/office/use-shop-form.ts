import { notifications } from '@mantine/notifications';
import type { SyntheticEvent } from 'react';
import type { Shop } from '../../shared/contract/office.ts';
import { deskQuery } from '../common/desk.ts';
import { fieldErrors } from '../common/refusal.tsx';
import { useShop } from '../common/shop.tsx';
import { useBy } from '../common/station.tsx';
import { useDraft } from '../common/use-draft.ts';
import { useWrite } from '../common/use-write.ts';

/**
 * Some of the shop's settings as a form. The rest of them go along as they stand when it is sent, so
 * that two pages of the office don't undo each other.
 */
export function useShopForm<Key extends keyof Shop>(draftKey: string, keys: readonly Key[]) {
  const shop = useShop();
  const by = useBy();
  const [draft, setDraft, clear] = useDraft<Partial<Pick<Shop, Key>>>(`office.${draftKey}`, {});
  const fields: Shop = { ...shop, ...draft };
  const changed = keys.some((key) => JSON.stringify(fields[key]) !== JSON.stringify(shop[key]));
  const save = useWrite(
    deskQuery.office.setShop.mutationOptions({
      onSuccess: () => {
        clear();
        notifications.show({ color: 'green', message: 'Saved. Papers issued from now on say so.' });
      },
    }),
  );
  return {
    fields,
    changed,
    save,
    errors: fieldErrors(save.error),
    set: (change: Partial<Pick<Shop, Key>>) => setDraft((before) => ({ ...before, ...change })),
    reset: () => {
      clear();
      save.reset();
    },
    submit: (event: SyntheticEvent) => {
      event.preventDefault();
      save.mutate({ by, ...fields });
    },
  };
}
