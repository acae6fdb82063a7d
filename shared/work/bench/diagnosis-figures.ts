import { dimensionOf, parseReading, toBase } from '../../trade/index.ts';
import { CHECK_UNITS, type Check, type CheckFigure, isMeasuredCheck } from './diagnosis.ts';
import type { LeakPath } from './test-run.ts';

/** A figure as it is typed: empty where that cylinder was not measured. */
export interface TypedFigure {
  cylinder: number;
  text: string;
  /** The unit beside the field, which one in the text comes before. */
  unit: 'kPa' | 'psi' | '%';
  path: LeakPath | null;
}

/** kPa (gauge): more than any engine here can press. */
const MOST_PRESSURE = 5_000;

export interface ReadFigures {
  figures: CheckFigure[];
  /** Why a figure can't be kept, by its place in the list. */
  faults: Record<number, string>;
}

/** Reads what a gauge showed. What can't be read, or can't be, is a fault at its place. */
export function readFigures(
  check: Check,
  typed: readonly TypedFigure[],
  cylinders: number,
): ReadFigures {
  const figures: CheckFigure[] = [];
  const faults: Record<number, string> = {};
  typed.forEach((figure, index) => {
    if (figure.text.trim() === '') return;
    const read = readFigure(check, figure, cylinders);
    if (typeof read === 'string') faults[index] = read;
    else figures.push(read);
  });
  if (new Set(figures.map(({ cylinder }) => cylinder)).size < figures.length)
    faults[typed.length - 1] ??= 'Give one figure for each cylinder.';
  return { figures, faults };
}

function readFigure(
  check: Check,
  { cylinder, text, unit, path }: TypedFigure,
  cylinders: number,
): CheckFigure | string {
  if (!isMeasuredCheck(check)) return 'This check has no figure: say in words what was seen.';
  if (cylinder > cylinders)
    return `This engine has ${cylinders === 1 ? 'one cylinder' : `${cylinders} cylinders`}.`;
  try {
    const reading = parseReading(text, unit);
    if (dimensionOf(reading.unit) !== dimensionOf(CHECK_UNITS[check]))
      return check === 'compression'
        ? 'Give a pressure, in kPa or psi.'
        : 'Give the leak in per cent.';
    const base = toBase(reading.value, reading.unit);
    if (base < 0) return 'Give a figure of zero or more.';
    if (check === 'leak-down' && base > 100) return 'A leak is 0 to 100 per cent.';
    if (check === 'compression' && base > MOST_PRESSURE)
      return 'That is more than any engine here can press. See which unit it is in.';
    return {
      cylinder,
      text: text.trim(),
      unit: reading.unit,
      base,
      path: check === 'leak-down' ? (path ?? 'none') : null,
    };
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}
