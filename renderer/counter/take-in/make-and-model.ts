import { fold } from '../../../shared/work/fold.ts';

export interface MakeAndModel {
  make: string;
  model: string;
}

/**
 * Splits what is read off a plate in one breath, 'Old Mill T-50', into make and model.
 * A comma decides ('Old Mill, T-50'); else the longest make that the shop knows already; else the first
 * word is the make. What was understood is shown under the field, so a wrong guess is seen at once.
 */
export function splitMakeAndModel(text: string, knownMakes: readonly string[]): MakeAndModel {
  const plain = text.trim().replace(/\s+/g, ' ');
  const comma = plain.indexOf(',');
  if (comma !== -1)
    return { make: plain.slice(0, comma).trim(), model: plain.slice(comma + 1).trim() };
  const words = plain.split(' ');
  const known = new Set(knownMakes.map(fold).filter((make) => make !== ''));
  for (let count = words.length; count > 1; count -= 1)
    if (known.has(fold(words.slice(0, count).join(' ')))) return splitAfter(words, count);
  return splitAfter(words, 1);
}

const splitAfter = (words: readonly string[], count: number): MakeAndModel => ({
  make: words.slice(0, count).join(' '),
  model: words.slice(count).join(' '),
});

/** The other way round, so that what was split is split the same way again. */
export const joinMakeAndModel = ({ make, model }: MakeAndModel): string =>
  make.includes(' ') && model !== ''
    ? `${make}, ${model}`
    : [make, model].filter(Boolean).join(' ');
