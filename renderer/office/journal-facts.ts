import { EVERY_STEP } from '../../shared/work/bench/default-build.ts';
import { JOB_STATE_LABELS } from '../../shared/work/counter/job-state.ts';
import { FEATURE_LABELS } from '../../shared/work/features.ts';
import {
  APPROVAL_WAY_LABELS,
  PAYMENT_METHOD_LABELS,
  STAFF_ROLE_LABELS,
} from '../../shared/work/vocabulary.ts';

/** How the shop writes what the journal keeps as figures. */
interface JournalWriting {
  money: (minor: number) => string;
  /** Thousandths of a unit. */
  quantity: (thousandths: number) => string;
  date: (isoDate: string) => string;
  instant: (iso: string) => string;
}

const MONEY = /^(amount|total|due|balance|carriage|creditLimit|(former)?(Cost|Price|cost|price))$/;
const QUANTITY = /^(quantity|counted|recounted|difference)$/;
const DATE = /^\d{4}-\d{2}-\d{2}$/;
const INSTANT = /^\d{4}-\d{2}-\d{2}T[\d:.]+Z$/;
const ID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
/** Fingerprints, keys of a place, and settings as a whole: nothing that anybody reads. */
const UNREAD = /^([0-9a-f]{64}|c\d+-.*|[[{].*)$/s;

const WORDS: Record<string, string> = {
  ...Object.fromEntries(EVERY_STEP.map(({ key, label }) => [key, label])),
  ...FEATURE_LABELS,
  ...JOB_STATE_LABELS,
  ...PAYMENT_METHOD_LABELS,
  ...APPROVAL_WAY_LABELS,
  ...STAFF_ROLE_LABELS,
};
/** What is kept by a key that has words of its own. */
const WORDED = /^(feature|holdPoint|from|to|method|how|role)$/;

/**
 * The particulars of an entry as people read them: ids by the names of what they stand for, figures as
 * the shop writes them. What has no name is left out; the fingerprint of the entry covers it all the same.
 */
export function journalFacts(
  entry: { what: string; detail: string; names: Record<string, string> },
  writing: JournalWriting,
): { name: string; value: string }[] {
  const written = Object.entries(particulars(entry.detail)).flatMap(([key, value]) => {
    const words = factWords(key, value, entry, writing);
    return words === '' || words === key ? [] : [{ name: spaced(key), value: words }];
  });
  return written.filter(
    ({ value }, index) => written.findIndex((other) => other.value === value) === index,
  );
}

function particulars(detail: string): Record<string, unknown> {
  try {
    const facts: unknown = JSON.parse(detail);
    return typeof facts === 'object' && facts !== null ? { ...facts } : {};
  } catch {
    return { '': detail };
  }
}

function factWords(
  key: string,
  value: unknown,
  { what, names }: { what: string; names: Record<string, string> },
  { money, quantity, date, instant }: JournalWriting,
): string {
  if (typeof value === 'boolean') return value ? 'yes' : '';
  if (typeof value === 'number') {
    const sum = MONEY.test(key) || what === 'till.cashUp';
    if (sum) return money(value);
    return QUANTITY.test(key) ? quantity(value) : String(value);
  }
  if (typeof value !== 'string') return '';
  if (ID.test(value)) return names[value] ?? '';
  if (UNREAD.test(value)) return '';
  if (DATE.test(value)) return date(value);
  if (INSTANT.test(value)) return instant(value);
  return WORDED.test(key) ? (WORDS[value] ?? value) : value;
}

const spaced = (name: string): string =>
  name.replace(/(?<=[a-z])[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
