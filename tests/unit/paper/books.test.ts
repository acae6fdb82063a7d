import { describe, expect, it } from 'vitest';
import type { Statement } from '../../../electron/paper/content.ts';
import { drawPaper, drawReport, fingerprintOf } from '../../../electron/paper/index.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Report } from '../../../shared/contract/till/index.ts';
import { formatMoney } from '../../../shared/money/format.ts';
import { faultsOf, type ReadPaper, readPaper, rowsWith } from './reading-back.ts';
import { head } from './samples.ts';

const { job: _job, machine: _machine, ...shopAndCustomer } = head;

const ENTRIES = 70;
const amountOf = (index: number) => 1_000 + index * 137;

const statement: Statement = {
  ...shopAndCustomer,
  kind: 'statement',
  number: 'S-000012',
  from: '2026-01-01',
  to: '2026-03-31',
  opening: 12_345,
  entries: Array.from({ length: ENTRIES }, (_, index) => ({
    on: '2026-02-14',
    what: index % 2 === 0 ? 'Invoice' : 'Payment',
    number: `I-${String(index).padStart(6, '0')}`,
    job: jobCode(index + 1),
    amount: index % 2 === 0 ? amountOf(index) : -amountOf(index),
    balance: 12_345 + index,
  })),
  closing: 98_765,
  openInvoices: [
    {
      number: 'I-000070',
      job: jobCode(69),
      invoicedOn: '2026-02-14',
      dueOn: '2026-03-16',
      open: 98_765,
    },
  ],
  ages: [
    { label: 'Not due', amount: 0 },
    { label: 'Up to 30 days', amount: 98_765 },
    { label: '31 to 60 days', amount: 0 },
    { label: '61 to 90 days', amount: 0 },
    { label: 'Over 90 days', amount: 0 },
  ],
  unapplied: 500,
  terms: ['Due within thirty days.'],
};

const printed = (minor: number, currency: string, locale: string) =>
  formatMoney(minor, currency, locale).replaceAll(/[\u00a0\u202f]/g, ' ');

/** The right edges of texts, points: figures of one column share one. */
const rightEdges = ({ placed }: ReadPaper, texts: readonly string[]) => [
  ...new Set(
    placed.filter(({ text }) => texts.includes(text)).map(({ x, width }) => Math.round(x + width)),
  ),
];

describe('the statement', () => {
  it.each([
    ['A4', 'EUR', 'de-DE'],
    ['Letter', 'USD', 'en-US'],
    ['A4', 'JPY', 'en-US'],
    ['Letter', 'KWD', 'en-GB'],
  ] as const)(
    'on %s in %s has every entry once, figures flush right',
    async (paperSize, currency, locale) => {
      const content = { ...statement, shop: { ...head.shop, paperSize, currency, locale } };
      const bytes = drawPaper(content, fingerprintOf(content));
      expect(faultsOf(bytes)).toBe('');
      const paper = await readPaper(bytes);
      expect(paper.pages.length).toBeGreaterThan(1);
      expect(paper.text).not.toContain('undefined');
      const money = (minor: number) => printed(minor, currency, locale);
      for (const { number, amount, balance } of statement.entries) {
        const rows = rowsWith(paper, number);
        expect(rows, number).toHaveLength(1);
        expect(rows[0]).toContain(money(Math.abs(amount)));
        expect(rows[0]).toContain(money(balance));
      }
      const charged = statement.entries
        .filter(({ amount }) => amount > 0)
        .map(({ amount }) => money(amount));
      expect(rightEdges(paper, charged)).toHaveLength(1);
      // Headings stand on every page that has entries.
      const headed = paper.placed.filter(({ text }) => text === 'Paid or credited');
      expect(headed.length).toBeGreaterThan(1);
      expect(paper.text).toContain('Owed by you');
    },
  );

  it('has neither a barcode nor a machine, and says when the shop owes', async () => {
    const content = { ...statement, entries: [], openInvoices: [], opening: -100, closing: -100 };
    const paper = await readPaper(drawPaper(content, fingerprintOf(content)));
    expect(paper.pages).toHaveLength(1);
    expect(paper.structure).not.toContain('Figure');
    expect(paper.text).not.toContain(head.machine.model);
    expect(paper.text).toContain('Owed to you');
  });
});

describe('a report', () => {
  const report: Report = {
    report: 'bookkeeping',
    title: 'For the accountant',
    from: '2026-03-01',
    to: '2026-03-31',
    tables: [
      {
        key: 'lines',
        heading: 'Journal lines',
        note: 'The lines of one entry balance.',
        columns: [
          { label: 'Entry', as: 'count' },
          { label: 'Date', as: 'date' },
          { label: 'Document', as: 'text' },
          { label: 'What', as: 'text' },
          { label: 'Customer', as: 'text' },
          { label: 'Job', as: 'job' },
          { label: 'Account', as: 'text' },
          { label: 'Debit', as: 'money' },
          { label: 'Credit', as: 'money' },
        ],
        rows: Array.from({ length: 120 }, (_, index) => [
          index + 1,
          '2026-03-14',
          'I-000042',
          'Invoice',
          'Łucja Żółkiewska and daughters, orchards and market gardens',
          jobCode(42),
          'Customers, owed to us',
          123_456,
          null,
        ]),
        total: [null, 'In all', null, null, null, null, null, 14_814_720, 14_814_720],
      },
      { key: 'none', heading: 'Nothing', note: '', columns: [], rows: [], total: null },
    ],
  };

  it('lies on the long side when it is wide, over as many pages as it takes', async () => {
    const bytes = drawReport({ ...shopAndCustomer, issuedBy: '' }, report, 'period');
    expect(faultsOf(bytes)).toBe('');
    const paper = await readPaper(bytes);
    expect(paper.pages.length).toBeGreaterThan(2);
    for (const { width, height } of paper.pages) expect(width).toBeGreaterThan(height);
    expect(paper.placed.filter(({ text }) => text === 'I-000042')).toHaveLength(120);
    expect(rowsWith(paper, 'In all')[0]).toContain('$148,147.20 $148,147.20');
    expect(paper.text).toContain('Mar 1, 2026 to Mar 31, 2026');
    expect(paper.text).toContain('Nothing in this time.');
    expect(paper.text).not.toContain('SHA-256');
  });
});
