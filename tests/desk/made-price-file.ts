import type { LineProblem } from '../../shared/work/parts/price-file/words.ts';

/** An invented supplier's price file, with one line in a hundred broken in one of ten ways. */
export interface MadeFile {
  bytes: Buffer;
  text: string;
  /** The broken lines, in their order: line number and why. */
  broken: { line: number; problem: LineProblem }[];
  usable: number;
}

const HEADING = 'Part no;Description;Dealer;List;Pack;Core;Replaced by';

export const partNumber = (index: number): string =>
  `QX ${String(1000 + index).padStart(6, '0')}-${index % 7}`;

/** Cents: the cost of a part, `dearer` by so many for every fifth of them. */
export const costOf = (index: number, dearer = 0): number =>
  150 + ((index * 37) % 9000) + (index % 5 === 0 ? dearer : 0);

const decimal = (minor: number): string => (minor / 100).toFixed(2).replace('.', ',');

/** One way for a line to be broken each: from the line as it would be, with the number of an earlier one. */
const BREAKS: readonly [LineProblem, (cells: string[], earlier: string) => string][] = [
  ['quotes', ([number, , ...rest]) => [number, '"Seal, never closed', ...rest].join(';')],
  ['columns', ([number, name, cost]) => [number, name, cost].join(';')],
  ['letters', ([number, , ...rest]) => [number, 'Dichtung f\u00ff', ...rest].join(';')],
  ['no-number', ([, ...rest]) => [' - ', ...rest].join(';')],
  ['twice', ([, ...rest], earlier) => [earlier.toLowerCase(), ...rest].join(';')],
  ['no-cost', ([number, name, , ...rest]) => [number, name, '', ...rest].join(';')],
  ['cost', ([number, name, , ...rest]) => [number, name, 'on request', ...rest].join(';')],
  ['below-zero', ([number, name, cost, ...rest]) => [number, name, `-${cost}`, ...rest].join(';')],
  [
    'pack',
    ([number, name, cost, list, , ...rest]) => [number, name, cost, list, '0', ...rest].join(';'),
  ],
  ['replaces-itself', (cells) => [...cells.slice(0, 6), cells[0]?.replace(' ', '.')].join(';')],
];

/** What stands for the byte that is no letter, until the bytes are made. */
const SPOILT = '\u00ff';

/**
 * @param lines how many lines with parts; every hundredth is broken, unless told otherwise
 * @param more `dearer`: minor units by which every fifth part costs more than in a file made without
 */
export function madePriceFile(
  lines: number,
  { dearer = 0, broken: hasBroken = true }: { dearer?: number; broken?: boolean } = {},
): MadeFile {
  const broken: MadeFile['broken'] = [];
  const written = [HEADING];
  for (let index = 0; index < lines; index += 1) {
    const cost = costOf(index, dearer);
    const replacedBy = index % 1000 === 500 ? partNumber(index + 1) : '';
    const name = index % 3 === 0 ? `"Gasket ${index}; für 5"" deck"` : `Gasket ${index}`;
    const cells = [
      partNumber(index),
      name,
      decimal(cost),
      decimal(cost * 2),
      String(1 + (index % 3)),
      '',
      replacedBy,
    ];
    const breaks = BREAKS[Math.floor(index / 100) % BREAKS.length];
    if (hasBroken && index % 100 === 99 && breaks !== undefined) {
      const [problem, breakLine] = breaks;
      written.push(breakLine(cells, partNumber(index - 9)));
      broken.push({ line: written.length, problem });
    } else written.push(cells.join(';'));
  }
  const text = `${written.join('\r\n')}\r\n`;
  return { bytes: spoilt(text), text, broken, usable: lines - broken.length };
}

/** UTF-8, with a byte that is no letter where one stood for it. */
const spoilt = (text: string): Buffer => {
  const bytes = Buffer.from(text.replaceAll(SPOILT, '\u0001'), 'utf8');
  for (let at = bytes.indexOf(1); at >= 0; at = bytes.indexOf(1, at + 1)) bytes[at] = 0xff;
  return bytes;
};
