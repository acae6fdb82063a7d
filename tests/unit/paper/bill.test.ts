import { describe, expect, test } from 'vitest';
import { paperLines, paperTotals } from '../../../electron/desk/papers/money.ts';
import { drawPaper, fingerprintOf } from '../../../electron/paper/index.ts';
import { Shop } from '../../../shared/contract/office.ts';
import { Line } from '../../../shared/contract/till/index.ts';
import { type BillTerms, drawUp } from '../../../shared/money/index.ts';
import { readPaper } from './reading-back.ts';
import { estimate } from './samples.ts';

/** What a bill says on paper of discounts, taxes, certificates and cores, and what it keeps to itself. */

const shop = Shop.parse({
  name: 'Lindholt & Ferro Engine Works',
  currency: 'USD',
  locale: 'en-US',
  timeZone: 'America/Chicago',
  paperSize: 'A4',
  country: 'US',
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [],
  labourRate: 0,
  bothUnits: false,
});
const terms: BillTerms = {
  rounding: 'half-up',
  taxBasis: 'invoice',
  taxes: [{ name: 'VAT', ratePpm: 200_000, kinds: ['part', 'labour'] }],
  pricesIncludeTax: false,
  exemptBy: '',
  takenOut: [],
  supplies: null,
};
const COST = 31_277;
const asked = [
  {
    kind: 'part' as const,
    description: 'Starter, exchange',
    quantity: 1_000,
    unitPrice: 50_000,
    unitCost: COST,
    discount: { by: 'share' as const, ppm: 100_000 },
    note: 'Fits from serial GF65-118000.',
  },
  { kind: 'core-charge' as const, description: 'Core, starter', quantity: 1_000, unitPrice: 6_500 },
  {
    kind: 'core-credit' as const,
    description: 'Core came back',
    quantity: 1_000,
    unitPrice: 6_500,
  },
];

function drawn(change: Partial<BillTerms>) {
  const discount = { by: 'amount' as const, amount: 5_000 };
  const bill = drawUp({ lines: asked, discount }, { ...terms, ...change });
  const lines = bill.lines.map((line) =>
    Line.parse({ partId: null, partNumber: '', unit: 'pc', unitCost: null, ...line }),
  );
  return { lines: paperLines(lines, shop), totals: paperTotals(bill.totals, shop, discount) };
}

const textOf = async (bill: ReturnType<typeof drawn>) => {
  const content = { ...estimate, options: [{ label: '', ...bill }] };
  return (await readPaper(drawPaper(content, fingerprintOf(content)))).text;
};

describe('a bill on paper', () => {
  test('says what is taken off a line and off the whole, and the line’s note', async () => {
    const text = await textOf(drawn({}));
    expect(text).toContain('Discount 10 %: -$50.00');
    expect(text).toContain('Fits from serial GF65-118000.');
    expect(text).toMatch(/Discount -\$50\.00 VAT 20 % on \$400\.00 \$80\.00/);
    expect(text).toMatch(/Total\s+\$480\.00/);
    expect(text).toMatch(/Core credit.*-\$65\.00/s);
  });

  test('puts taxes within prices below the total', async () => {
    const text = await textOf(drawn({ pricesIncludeTax: true }));
    expect(text).toMatch(/Total\s+\$400\.00\s+Within the total: VAT 20 % in \$400\.00\s+\$66\.67/);
  });

  test('names the certificate of who pays no tax', async () => {
    const text = await textOf(drawn({ taxes: [], exemptBy: 'EX-4471' }));
    expect(text).toContain('No tax: exempt by certificate EX-4471');
  });

  test('shows what is taken out of the prices for who is exempt, above the total', async () => {
    const text = await textOf(
      drawn({ pricesIncludeTax: true, taxes: [], takenOut: terms.taxes, exemptBy: 'EX-4471' }),
    );
    expect(text).toMatch(
      /VAT 20 % taken out of \$400\.00\s+-\$66\.67\s+Total\s+\$333\.33\s+No tax: exempt/,
    );
  });

  test('keeps what things cost the shop to itself', () => {
    expect(JSON.stringify(drawn({}))).not.toContain(String(COST));
  });
});
