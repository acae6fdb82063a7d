import { SourceId } from '../../shared/contract/ids.ts';
import { deskQuery } from '../common/desk.ts';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import type { SourceDraft } from './source-choice.tsx';

/**
 * Turns a chosen or written-out source into its id, adding it to the book when it is new. `settle` gives
 * null when nothing is chosen or the source was refused; the refusal is then in `error`.
 */
export function useSource(onSettled: (id: SourceId) => void) {
  const by = useBy();
  const add = useWrite(deskQuery.specbook.addSource.mutationOptions());
  const settle = async (draft: SourceDraft): Promise<SourceId | null> => {
    if (draft.sourceId !== 'new') return SourceId.safeParse(draft.sourceId).data ?? null;
    try {
      const { kind, title, edition, date } = draft;
      const source = await add.mutateAsync({ by, kind, title, edition, date });
      onSettled(source.id);
      return source.id;
    } catch {
      // The refusal is shown from `error`.
      return null;
    }
  };
  return { settle, error: add.error, pending: add.isPending };
}
