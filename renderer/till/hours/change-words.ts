import type { ClockChange } from '../../../shared/contract/till/index.ts';
import type { Format } from '../../common/format.ts';

const DONE: Record<ClockChange['what'], string> = {
  on: 'Clocked on',
  off: 'Clocked off',
  corrected: 'Corrected to',
  'struck-out': 'Struck out',
};

/** What was done to an entry, as a sentence: what, by whom, when, and why. */
export function changeSentence(
  { what, jobCode, workKind, startedAt, endedAt, reason, by, at }: ClockChange,
  format: Pick<Format, 'instant' | 'time'>,
): string {
  const entered = what === 'on' && endedAt !== null;
  const end = endedAt === null ? '' : ` to ${format.time(endedAt)}`;
  const job = [jobCode, workKind].filter(Boolean).join(', ');
  const facts: Record<ClockChange['what'], string> = {
    on: ` ${job}, ${format.instant(startedAt)}${end}`,
    off: endedAt === null ? '' : ` ${format.instant(endedAt)}`,
    corrected: ` ${job}, ${format.instant(startedAt)}${end}`,
    'struck-out': '',
  };
  const why = reason === '' ? '' : `: ${reason}`;
  return `${entered ? 'Entered afterwards' : DONE[what]}${facts[what]}${why}. ${by}, ${format.instant(at)}.`;
}
