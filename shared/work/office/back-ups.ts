/** Back-ups: where one came from, what its file is called, and which of the daily ones are kept. */

export const BACK_UP_ORIGINS = [
  'by-hand',
  'daily',
  'before-update',
  'before-bringing-back',
  'put-there',
] as const;
export type BackUpOrigin = (typeof BACK_UP_ORIGINS)[number];

export const BACK_UP_ORIGIN_LABELS: Record<BackUpOrigin, string> = {
  'by-hand': 'By hand',
  daily: 'By itself, daily',
  'before-update': 'By itself, before an update',
  'before-bringing-back': 'By itself, before another was brought back',
  'put-there': 'Put into the folder by somebody',
};

/** The long works on back-ups that show progress and can be stopped. */
export const LONG_WORK_KINDS = ['back-up', 'check', 'bring-back'] as const;
export type LongWorkKind = (typeof LONG_WORK_KINDS)[number];

export const LONG_WORK_STATES = ['running', 'done', 'stopped', 'failed'] as const;

export const LONG_WORK_STEPS = ['copying', 'checking', 'keeping', 'placing'] as const;
export type LongWorkStep = (typeof LONG_WORK_STEPS)[number];

/** Of the daily back-ups so many are kept; no other is ever deleted. */
export const DAILY_KEPT = 14;

export interface BackUpName {
  /** UTC, ISO 8601. */
  at: string;
  origin: BackUpOrigin;
}

/** `tappet-2026-11-25T09-20-12-000Z-daily.db`: what every system takes as a file name, in the order of time. */
export function backUpFileName({ at, origin }: BackUpName): string {
  const suffix = origin === 'by-hand' ? '' : `-${origin}`;
  return `tappet-${at.replace(/[:.]/g, '-')}${suffix}.db`;
}

const NAME = /^tappet-(\d{4}-\d\d-\d\d)T(\d\d)-(\d\d)-(\d\d)-(\d{3})Z(?:-([a-z-]+))?\.db$/;

/** What one of our names says; null for the name of a file that somebody else put there. */
export function readBackUpName(fileName: string): BackUpName | null {
  const found = NAME.exec(fileName);
  if (found === null) return null;
  const [, date, hours, minutes, seconds, thousandths, suffix = 'by-hand'] = found;
  const origin = BACK_UP_ORIGINS.find((each) => each === suffix && each !== 'put-there');
  const at = `${date}T${hours}:${minutes}:${seconds}.${thousandths}Z`;
  if (origin === undefined || Number.isNaN(Date.parse(at))) return null;
  return { at, origin };
}

/** The daily back-ups that are one too many, by their file names. */
export function dailyToDrop(fileNames: readonly string[]): string[] {
  return fileNames
    .filter((name) => readBackUpName(name)?.origin === 'daily')
    .sort()
    .reverse()
    .slice(DAILY_KEPT);
}

/** Why a file can't be brought back, or a copy can't be made. */
export const BACK_UP_TROUBLES = [
  'NOT_OURS',
  'NEWER_PROGRAM',
  'MIGRATIONS_DIFFER',
  'DAMAGED',
  'JOURNAL_BROKEN',
  'NO_SHOP',
  'FILE_CHANGED',
  'UPDATE_FAILED',
] as const;
export type BackUpTroubleCode = (typeof BACK_UP_TROUBLES)[number];
