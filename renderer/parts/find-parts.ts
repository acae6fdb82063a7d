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

/** The part whose barcode, or else whose number, is exactly what is typed, spaces and dashes aside. */
export async function partByNumber(typed: string): Promise<Part | null> {
  const wanted = foldNumber(typed);
  if (wanted === '') return null;
  const found = await findParts(typed, 50);
  return (
    found.find((part) => part.barcode !== '' && foldNumber(part.barcode) === wanted) ??
    found.find((part) => foldNumber(part.number) === wanted) ??
    null
  );
}
