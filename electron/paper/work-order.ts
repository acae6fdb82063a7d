import type { HoldPointLine, WorkOrder } from './content.ts';
import { billLines, dueBalance, totalsBlock } from './furniture/bill.ts';
import { cautionBox } from './furniture/cautions.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { localLaw } from './furniture/local-law.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { approvals, payments } from './furniture/record.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { signatureBoxes } from './furniture/signatures.ts';
import { cell, table } from './furniture/table.ts';
import { featureReadings } from './readings.ts';

/** The record of the whole job, signed by customer and shop at handover. */
export function drawWorkOrder(content: WorkOrder, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    section(sheet, 'What the customer said', [paragraph(sheet, content.complaint)]),
    section(sheet, 'What was done', [paragraph(sheet, content.workDone)]),
    ...readings(sheet, content),
    ...holdPoints(sheet, content.holdPoints),
    section(sheet, billHeading(content), [
      billLines(sheet, content.lines),
      totalsBlock(sheet, content.totals, [dueBalance(content.due)]),
    ]),
    ...payments(sheet, content.payments),
    ...approvals(sheet, content.approvals),
    ...afterwards(sheet, content),
    ...(content.cautions.length > 0 ? [cautionBox(sheet, content.cautions)] : []),
    signing(sheet, content, fingerprint),
  ]);
}

/** Signatures, what they are put to, and the fingerprint of it: never parted by a page. */
function signing(sheet: Sheet, content: WorkOrder, fingerprint: string): Block {
  return section(
    sheet,
    'Signed at handover',
    [
      paragraph(
        sheet,
        'The customer has received the machine and a copy of this work order. The shop states that work and readings are recorded here as they were done and taken.',
      ),
      signatureBoxes(sheet, [
        { label: 'Customer', signature: content.customerSignature },
        { label: 'For the shop', signature: content.shopSignature },
      ]),
      section(
        sheet,
        'Fingerprint',
        [
          paragraph(sheet, fingerprint, STYLE.fingerprint),
          paragraph(
            sheet,
            'SHA-256 of everything recorded on this work order, signatures included: were a word or a figure changed later, the fingerprint would be another.',
            STYLE.soft,
          ),
          localLaw(sheet),
        ],
        { gap: 2, style: STYLE.subheading, level: 'H3' },
      ),
    ],
    { gap: 8, together: true },
  );
}

function readings(sheet: Sheet, content: WorkOrder): Block[] {
  const [first, ...rest] = content.features.map((feature) => featureReadings(sheet, feature));
  if (first === undefined) return [];
  const legend = paragraph(
    sheet,
    `Readings stand as they were typed. A verdict allows for the error of the gauge (expanded uncertainty, k = 2): “too close to call” means that reading and limit lie nearer to each other than the gauge can tell apart.`,
    STYLE.soft,
  );
  const model = content.engineModel.trim();
  const heading = model
    ? `Recorded clearances and settings, ${model}`
    : 'Recorded clearances and settings';
  // The heading takes the first feature along, so that it never stands above nothing.
  return [section(sheet, heading, [{ ...legend, keepsNext: true }, first], { gap: 8 }), ...rest];
}

const OUTCOME_WORDS = {
  passed: 'passed',
  overridden: 'overridden',
  open: 'left open',
} satisfies Record<HoldPointLine['outcome'], string>;

const OUTCOME_SIGNS = { passed: 'within', overridden: 'too-close', open: 'no-band' } as const;

function holdPoints(sheet: Sheet, lines: HoldPointLine[]): Block[] {
  if (lines.length === 0) return [];
  const block = table(sheet, {
    columns: [
      { heading: 'Hold point', width: 2 },
      { heading: 'Outcome', width: 1.2 },
      { heading: 'By', width: 1 },
      { heading: 'When', width: 'fit' },
    ],
    rows: lines.map((line) => ({
      cells: [
        cell(line.label),
        {
          paragraphs: [{ text: OUTCOME_WORDS[line.outcome], style: STYLE.cell }],
          sign: OUTCOME_SIGNS[line.outcome],
        },
        cell(line.by || '–'),
        cell(line.at ? sheet.writing.instant(line.at) : '–'),
      ],
      remark: line.reason && `Reason: ${line.reason}`,
    })),
  });
  return [section(sheet, 'Hold points', [block])];
}

function afterwards(sheet: Sheet, content: WorkOrder): Block[] {
  const next = content.nextServiceOn === null ? '' : sheet.writing.date(content.nextServiceOn);
  const rest: [string, string][] = [
    ['Old parts', content.oldParts],
    ['Warranty', content.warranty],
    ['Running in and care', content.advice.join('\n')],
    ['Next service', next],
  ];
  const told = rest.some(([, words]) => words.trim() !== '');
  return told ? [section(sheet, 'Afterwards', [facts(sheet, rest)])] : [];
}

function billHeading(content: WorkOrder): string {
  return content.invoiceNumber.trim()
    ? `Work and parts, as billed on invoice ${content.invoiceNumber}`
    : 'Work and parts';
}
