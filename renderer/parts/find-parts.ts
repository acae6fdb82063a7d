import { keepPreviousData, type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { Part } from '../../shared/contract/parts/index.ts';
import { foldNumber } from '../../shared/work/fold.ts';
import { desk } from '../common/desk.ts';

/** Whether a text may be a part's number or what a barcode reader typed. */
export const mayBeNumber = (typed: string): boolean =>
  /\d/.test(typed) && foldNumber(typed).length >= 3 && typed.trim().length <= 60;

const findParts = (typed: string, limit: number): Promise<Part[]> =>
  desk.parts.find({ text: typed.trim(), limit });

/** Parts that go with what is typed; those found before stay until the answer is there. */
export function useFoundParts(text: string, limit: number, wanted = true): UseQueryResult<Part[]> {
  return useQuery({
    queryKey: ['parts found', text, limit],
    queryFn: () => findParts(text, limit),
    enabled: wanted,
    placeholderData: keepPreviousData,
  });
}

/** The part that has exactly this number or barcode, by any of its numbers. */
export async function partByNumber(typed: string): Promise<Part | null> {
  if (foldNumber(typed) === '' || typed.trim().length > 120) return null;
  const [hit] = await desk.parts.byNumber({ number: typed });
  return hit?.part ?? null;
}

/** The part to sell by a number: once it is replaced and the shelf has none left, the one that took its place. */
export async function partToSell(typed: string): Promise<Part | null> {
  if (foldNumber(typed) === '' || typed.trim().length > 120) return null;
  const [hit] = await desk.parts.byNumber({ number: typed });
  if (hit === undefined || hit.current === null || hit.part.onHand > 0) return hit?.part ?? null;
  return (await desk.parts.part({ id: hit.current.id })).part;
}
