import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Part } from '../../../shared/contract/parts.ts';
import { foldNumber } from '../../../shared/work/fold.ts';
import { desk, deskQuery } from '../../common/desk.ts';

const OFFERED = 8;

/** Parts whose number, description or barcode goes with what is typed; none below two characters. */
export function useOfferedParts(typed: string, wanted: boolean): Part[] {
  const text = typed.trim();
  const enabled = wanted && text.length >= 2;
  const query = useQuery({
    ...deskQuery.parts.find.queryOptions({ input: { text, limit: OFFERED } }),
    enabled,
    placeholderData: keepPreviousData,
  });
  return enabled ? (query.data ?? []) : [];
}

/** Whether a text may be a part's number or what a barcode reader typed. */
export const mayBeNumber = (typed: string): boolean =>
  /\d/.test(typed) && foldNumber(typed).length >= 3 && typed.trim().length <= 40;

/** The part whose number or barcode is exactly what is typed, spaces and dashes aside. */
export async function partByNumber(typed: string): Promise<Part | null> {
  const wanted = foldNumber(typed);
  const found = await desk.parts.find({ text: typed.trim(), limit: 50 });
  return (
    found.find((part) => part.barcode !== '' && foldNumber(part.barcode) === wanted) ??
    found.find((part) => foldNumber(part.number) === wanted) ??
    null
  );
}
