import Database from 'better-sqlite3';
import { StoreRefusal } from './refusal.ts';

/** What lies behind an error: drivers wrap them in errors of their own. */
function causes(error: unknown): unknown[] {
  const chain: unknown[] = [];
  for (let one = error; one instanceof Error && !chain.includes(one); one = one.cause)
    chain.push(one);
  return chain;
}

const codeOf = (error: unknown): string => {
  const code: unknown = error instanceof Error && 'code' in error ? error.code : undefined;
  return typeof code === 'string' ? code : '';
};

const isFull = (code: string): boolean =>
  code.startsWith('SQLITE_FULL') || code === 'ENOSPC' || code === 'EDQUOT';

// SQLite result codes, https://www.sqlite.org/rescode.html; the extended ones begin with the plain ones.
const isFailing = (code: string): boolean =>
  /^SQLITE_(IOERR|CORRUPT|NOTADB|READONLY|CANTOPEN|PROTOCOL)/.test(code) || code === 'EIO';

/** Why the disk didn't take or give what was asked of it; undefined when the error is of another kind. */
export function troubleOf(error: unknown): 'DISK_FULL' | 'STORE_FAILING' | undefined {
  const codes = causes(error).map(codeOf);
  if (codes.some(isFull)) return 'DISK_FULL';
  return codes.some(isFailing) ? 'STORE_FAILING' : undefined;
}

/** The refusal for an error that came while a store was being opened; one of another kind stays what it is. */
export function openingRefusal(error: unknown, file: string): unknown {
  if (error instanceof StoreRefusal) return error;
  const options = { cause: error, detail: error instanceof Error ? error.message : file };
  const code = codeOf(error);
  if (isFull(code)) return new StoreRefusal('DISK_FULL', options);
  if (error instanceof Database.SqliteError) {
    if (code.startsWith('SQLITE_BUSY')) return new StoreRefusal('IN_USE', { cause: error });
    if (/^SQLITE_(CANTOPEN|READONLY|PERM)/.test(code))
      return new StoreRefusal('NO_ACCESS', { cause: error, detail: file });
    if (/^SQLITE_IOERR/.test(code)) return new StoreRefusal('DISK_FAILING', options);
    return new StoreRefusal('DAMAGED', options);
  }
  if (/^E[A-Z]+$/.test(code)) return new StoreRefusal('NO_ACCESS', options);
  return error;
}
