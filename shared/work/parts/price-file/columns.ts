import { fold } from '../../fold.ts';
import type { PriceFileField } from './words.ts';

/** Which column holds what, by its heading: the words that suppliers write there. */

const EMPTY: Record<PriceFileField, number | null> = {
  number: null,
  description: null,
  cost: null,
  listPrice: null,
  packSize: null,
  coreCharge: null,
  supersededBy: null,
};

/** A heading without its dots, dashes and brackets: `Part-No. (new)` is `part no new`. */
const words = (heading: string): string =>
  fold(heading)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** In the order in which they are looked for: `replaced by part no` must not pass for the part's number. */
const HEADINGS: readonly [PriceFileField, readonly RegExp[]][] = [
  [
    'supersededBy',
    [
      /supersed|replace[ds]? by|replacement|new (part )?(no|num|number)|succe|ersetzt|remplac|sustit/,
    ],
  ],
  ['coreCharge', [/\bcore\b|exchange|old part deposit|altteil|pfand|consigne/]],
  ['packSize', [/\bpack|\bpkg|per (box|bag)|qty per|\bve\b|inhalt|conditionnement|envase/]],
  [
    'listPrice',
    [/\blist\b|retail|recommended|\bmsrp\b|\brrp\b|listen|brutto|\bvk\b|public|\bpvp\b/],
  ],
  [
    'cost',
    [
      /\bcost\b|\bnet\b|dealer|trade|your price|netto|\bek\b|einkauf|achat|\bnet\b|coste|compra/,
      /^price$|unit price|\bprice\b|preis|prix|precio/,
    ],
  ],
  [
    'number',
    [
      /part (no|num|nr|number)|^part$|item (no|num|number)|article (no|num|number)|stock code|artikel ?n|teile ?n|reference|referencia/,
      /\bsku\b|\bcode\b|\bitem\b|\bnumber\b|^no$|^ref$|numero|nummer/,
    ],
  ],
  ['description', [/descri|bezeichnung|designation|libelle|^name$|\btext\b|\btitle\b/]],
];

/** The columns that the headings speak of; those that nobody can tell stay null. */
export function columnsByHeading(
  headings: readonly string[],
): Record<PriceFileField, number | null> {
  const columns = { ...EMPTY };
  const free = headings.map(words);
  for (const [field, patterns] of HEADINGS) {
    const found = patterns
      .map((pattern) => free.findIndex((heading) => pattern.test(heading)))
      .find((index) => index >= 0);
    if (found === undefined) continue;
    columns[field] = found;
    free[found] = '';
  }
  return columns;
}

/** The columns of last time: by their heading where it is still there, by their place where it had none. */
export function columnsAsBefore(
  before: Record<PriceFileField, { column: number; heading: string } | null>,
  headings: readonly string[],
): Record<PriceFileField, number | null> {
  const now = headings.map(words);
  const find = ({ column, heading }: { column: number; heading: string }): number | null => {
    if (words(heading) === '') return column < now.length ? column : null;
    if (now[column] === words(heading)) return column;
    const moved = now.indexOf(words(heading));
    return moved >= 0 ? moved : null;
  };
  const of = (field: PriceFileField) => {
    const known = before[field];
    return known === null ? null : find(known);
  };
  return {
    number: of('number'),
    description: of('description'),
    cost: of('cost'),
    listPrice: of('listPrice'),
    packSize: of('packSize'),
    coreCharge: of('coreCharge'),
    supersededBy: of('supersededBy'),
  };
}

/** Whether a line looks like headings: words in it, and nothing that could be a price. */
export const looksLikeHeadings = (cells: readonly string[]): boolean =>
  Object.values(columnsByHeading(cells)).filter((column) => column !== null).length >= 2 &&
  !cells.some((cell) => /^\W*\d+([.,]\d+)?\W*$/.test(cell));
