import { describe, expect, it } from 'vitest';
import type { PaperContent } from '../../../electron/paper/content.ts';
import { drawPaper, fingerprintOf } from '../../../electron/paper/index.ts';
import { formatMoney } from '../../../shared/money/format.ts';
import { type ReadPaper, readPaper, rowsWith } from './reading-back.ts';
import {
  claimTicket,
  creditNote,
  differingInvoice,
  estimate,
  features,
  head,
  invoice,
  lines,
  optionsSideBySide,
  receipt,
  tag,
  workOrder,
} from './samples.ts';

const read = (content: PaperContent) => readPaper(drawPaper(content, fingerprintOf(content)));

const WORDS = {
  within: 'within limits',
  outside: 'outside limits',
  'too-close': 'too close to call',
  'no-band': 'no limits',
};

/** An amount as it is printed: no-break spaces become plain ones, so that it can be searched for. */
const printed = (minor: number, currency: string, locale: string) =>
  formatMoney(minor, currency, locale).replaceAll(/[\u00a0\u202f]/g, ' ');

describe('the work order', () => {
  it('has every reading with its verdict, gauge and time on one line', async () => {
    const paper = await read(workOrder);
    const readings = features.flatMap((feature) => feature.readings);
    const time = new Intl.DateTimeFormat('en-US', {
      timeStyle: 'short',
      timeZone: head.shop.timeZone,
    });
    for (const { asTyped, verdict, gauge, uncertainty, at } of readings) {
      const { text: legend = '' } = paper.placed.find(({ text }) => text.endsWith(gauge)) ?? {};
      const [code = 'none'] = legend.split(' ');
      expect(code).toMatch(/^G\d$/);
      const rows = rowsWith(paper, asTyped);
      expect(rows, asTyped).not.toHaveLength(0);
      expect(
        rows.some((row) =>
          [WORDS[verdict], `${code} ${uncertainty}`, time.format(new Date(at))].every((words) =>
            row.includes(words),
          ),
        ),
        asTyped,
      ).toBe(true);
    }
  });

  it('says who took the readings of a phase, and when, above the first of them', async () => {
    const paper = await read(workOrder);
    for (const [phase, who] of [
      ['as received', 'Tomas Lindholt, Mar 17, 2026'],
      ['build', 'Tomas Lindholt, Mar 25, 2026'],
    ] as const) {
      expect(rowsWith(paper, phase).join()).toContain(who);
    }
    // The only reading of a phase says so in its own row.
    expect(rowsWith(paper, '3.4 Ω').join()).toContain('test run · Ines Ferro, Mar 26, 2026');
  });

  it('has limits once where all readings share them, and in each row where they do not', async () => {
    // Short enough that the bore is not continued on another page, where its limits would stand again.
    const { placed, text } = await read({ ...workOrder, findings: [] });
    const rowOf = (words: string) => rowsWith({ placed } as ReadPaper, words).join();
    expect(rowOf('Cylinder bore')).toContain('70.000 to 70.025 mm');
    expect(text.split('70.000 to 70.025 mm')).toHaveLength(2);
    expect(rowOf('17 lbf·ft')).toContain('stage 3: 16 to 18 lbf·ft, aim 17');
  });

  it('has sources, standings, names, cautions and the fingerprint', async () => {
    const { text } = await read(workOrder);
    for (const { source } of features) expect(text).toContain(source);
    expect(text).toContain('UNCONFIRMED SPECIFICATION');
    expect(text).toContain('SINGLE-SOURCE SPECIFICATION');
    expect(text).toContain('Confirmed specification');
    expect(text).toContain('Łucja Żółkiewska');
    expect(text).toContain('Ines Ferro typed name');
    for (const caution of workOrder.cautions) expect(text).toContain(caution);
    // Once in the body, once at the foot of each page.
    const fingerprint = fingerprintOf(workOrder);
    const { pages } = await read(workOrder);
    expect(text.split(fingerprint)).toHaveLength(pages.length + 2);
  });

  it('has derived values, hold points with reasons, approvals, payments and what follows', async () => {
    const { text } = await read(workOrder);
    for (const words of [
      'taper 0.050 mm',
      'Reason: The maker asks for no second tightening',
      'Questioned (0.3 mm?), kept as typed',
      'E-000042-2',
      'as billed on invoice I-000137',
      '$516.52',
      'Piston, rings and gaskets returned',
      'Oct 1, 2026',
      'First five hours: vary the load',
      'Paid in full',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('has what was decided with size, reason and who, and the photos with who took them and when', async () => {
    const paper = await read(workOrder);
    const bore = rowsWith(paper, 'Next oversize, 0.25 mm').join();
    for (const words of ['Cylinder bore', '0.25 mm', '68.250 to 68.265 mm', 'Tomas Lindholt'])
      expect(bore).toContain(words);
    expect(paper.text).toContain('Reason: Clearance near its limit; the customer was told');
    const photo = rowsWith(paper, 'Cylinder bore: Scored on the thrust side').join();
    for (const words of ['Cylinder bore', 'Tomas Lindholt', 'Mar 17, 2026', '5c5c5c5c5c5c'])
      expect(photo).toContain(words);
    const bare = await read({ ...workOrder, decisions: [], photos: [] });
    expect(bare.text).not.toMatch(/Decided after|Photos on record/);
  });

  it.each([workOrder, estimate])('says what the diagnosis found: $kind', async (content) => {
    const paper = await read(content);
    const leak = rowsWith(paper, 'Leak-down').join();
    expect(leak).toContain('Wants work');
    expect(leak).toContain('38 %, crankcase breather: the rings. Heard at the breather');
    expect(paper.text).toContain('Sound: Spark.');
    expect((await read({ ...content, findings: [] })).text).not.toContain('Found at diagnosis');
  });

  it('names what another source says against a figure, and averages nothing', async () => {
    const { text } = await read(workOrder);
    expect(text).toMatch(
      /SOURCES DISAGREE\s+19 to 21 lbf·ft, Calder fastener card, 2nd printing, page 3\. Not settled/,
    );
  });

  it('has the bolts of a torque as the source prints their thread', async () => {
    expect(rowsWith(await read(workOrder), 'Head bolts').join()).toContain(
      '8 bolts, 5/16-18 UNC, grade 5',
    );
  });

  it('has the last test run with who ran it, and nothing where it was not run', async () => {
    const paper = await read(workOrder);
    expect(rowsWith(paper, 'Test run: passed').join()).toContain(
      'Tomas Lindholt, Mar 26, 2026, 10:20 AM',
    );
    expect(rowsWith(paper, 'Idle').join()).toContain('1750 rpm');
    expect((await read({ ...workOrder, testRun: null })).text).not.toContain('Test run: ');
  });

  it('names the paper that it corrects', async () => {
    const corrects = { number: 'W-000041', fingerprint: 'ab'.repeat(32) };
    const { text } = await read({ ...workOrder, corrects });
    expect(text).toContain('This paper corrects W-000041');
    expect(text).toContain(corrects.fingerprint);
  });
});

describe('the other papers', () => {
  it('the claim ticket is one page with what was agreed', async () => {
    for (const paperSize of ['A4', 'Letter'] as const) {
      const content = { ...claimTicket, shop: { ...head.shop, paperSize } };
      const { text, pages } = await read(content);
      expect(pages).toHaveLength(1);
      for (const words of ['$45.00', '$150.00', '$100.00', 'Mar 28, 2026', ...content.terms]) {
        expect(text).toContain(words);
      }
    }
  });

  it('a claim ticket and a tag that take the place of others name them', async () => {
    const fingerprint = 'ab'.repeat(32);
    const ticket = { number: 'C-000042', fingerprint, reason: 'The bag was in the car' };
    expect((await read({ ...claimTicket, corrects: ticket })).text).toContain(
      `(fingerprint ${fingerprint}). Why: The bag was in the car`,
    );
    const former = await read({ ...tag, corrects: { number: 'T-000042', fingerprint } });
    expect(former.text).toContain('In place of T-000042');
    expect(former.pages).toHaveLength(1);
  });

  it('the claim ticket can be signed by hand', async () => {
    const content = { ...claimTicket, signature: null, spendingLimit: null };
    const { text } = await read(content);
    expect(text).toContain('Name, date and signature');
    expect(text).toContain('none agreed');
  });

  it('estimate and invoice have every line with its amount on the same row', async () => {
    for (const content of [estimate, invoice]) {
      const paper = await read(content);
      for (const line of lines) {
        const amount = printed(line.amount, 'USD', 'en-US');
        expect(rowsWith(paper, line.description).join()).toContain(amount);
      }
      expect(rowsWith(paper, 'Total').join()).toContain('$616.52');
    }
  });

  it('options stand side by side and then each with its lines and its total', async () => {
    const paper = await read(optionsSideBySide);
    const totals = optionsSideBySide.options.map(({ totals }) =>
      printed(totals.total, 'USD', 'en-US'),
    );
    expect(
      rowsWith(paper, 'Total').some((row) => totals.every((total) => row.includes(total))),
    ).toBe(true);
    for (const total of totals)
      expect(paper.placed.filter(({ text }) => text === total).length).toBeGreaterThan(1);
    expect(paper.text).toContain('Option 3: Replace the engine');
    expect(paper.text).toContain('Option taken:');
    expect(rowsWith(paper, 'New recoil rope').join()).toContain('$15.00');
  });

  it('an invoice says how it differs from what was approved, and what was declined', async () => {
    const paper = await read(differingInvoice);
    expect(rowsWith(paper, 'Strip, measure and rebuild engine').join()).toMatch(
      /\$360\.00.*\$396\.00.*\$36\.00/,
    );
    expect(rowsWith(paper, 'Governor spring').join()).toMatch(/\$6\.40.*left out.*-\$6\.40/);
    expect(rowsWith(paper, 'Grind the valve seats').join()).toContain('$76.00');
  });

  it('a credit note names the invoice, and says what becomes of the money', async () => {
    const { text } = await read(creditNote);
    expect(text).toContain('This paper corrects I-000137');
    expect(text).toContain('Off what was still to be paid $10.00');
    expect(text).toContain('Paid before, and yours again $20.71');
  });

  it('a receipt says what the money is set against, and what change was given', async () => {
    const paper = await read(receipt);
    expect(paper.text).toContain('Payment: $530.00');
    expect(rowsWith(paper, 'Change').join()).toContain('$70.00');
    expect(rowsWith(paper, 'Invoice I-000137').join()).toMatch(/\$516\.52.*\$0\.00/);
  });

  it('what is still to pay is said in words that fit', async () => {
    expect((await read({ ...invoice, due: 500 })).text).toContain('To pay $5.00');
    const onAccount = { ...invoice, due: 500, dueOn: '2026-04-26' };
    expect((await read(onAccount)).text).toContain('To pay by Apr 26, 2026 $5.00');
    expect((await read({ ...invoice, due: -500 })).text).toContain('Owed to the customer $5.00');
  });
});

describe('currencies and locales', () => {
  it.each([
    ['JPY', 'ja-JP'],
    ['KWD', 'en-GB'],
    ['EUR', 'fr-FR'],
    ['PLN', 'pl-PL'],
    ['CHF', 'de-CH'],
  ])('%s in %s', async (currency, locale) => {
    const content = { ...invoice, shop: { ...head.shop, currency, locale } };
    const paper = await read(content);
    expect(squeezed(paper.text)).toContain(squeezed(printed(61652, currency, locale)));
    expect(paper.text).not.toContain('\ufffd');
  });

  it('dates are written in the zone of the shop', async () => {
    const content = { ...invoice, shop: { ...head.shop, timeZone: 'Pacific/Auckland' } };
    expect((await read(content)).text).toContain('Issued Mar 28, 2026, 4:42 AM');
  });
});

describe('paper sizes', () => {
  it.each([
    ['A4', 595.28, 841.89],
    ['Letter', 612, 792],
  ] as const)('%s, with everything between the margins', async (paperSize, width, height) => {
    const paper = await read({ ...workOrder, shop: { ...head.shop, paperSize } });
    expect(paper.pages[0]?.width).toBeCloseTo(width, 1);
    expect(paper.pages[0]?.height).toBeCloseTo(height, 1);
    expectInside(paper);
  });
});

function expectInside({ placed, pages }: ReadPaper) {
  for (const { text, page, x, y, width } of placed) {
    const size = pages[page - 1];
    expect(x, text).toBeGreaterThan(40);
    expect(x + width, text).toBeLessThan((size?.width ?? 0) - 40);
    expect(y, text).toBeLessThan((size?.height ?? 0) - 20);
  }
}

function squeezed(text: string): string {
  return text.normalize('NFC').replaceAll(/\s+/g, '');
}
