import { NOT_TO_BE_RUN } from '../../shared/work/cautions.ts';
import { datesWritten } from '../../shared/work/dates-in-words.ts';
import { decisions, findings, photosOnRecord } from './bench-record.ts';
import type { HoldPointLine, TestRunRecord, WorkOrder } from './content.ts';
import { billLines, paymentsAndDue, totalsBlock } from './furniture/bill.ts';
import { cautionBox } from './furniture/cautions.ts';
import { facts } from './furniture/facts.ts';
import { fullPages } from './furniture/full-page.ts';
import { STYLE } from './furniture/ink.ts';
import { paragraph, section } from './furniture/paragraphs.ts';
import { parties } from './furniture/parties.ts';
import { approvals } from './furniture/record.ts';
import { recordName } from './furniture/record-attached.ts';
import type { Block, Sheet } from './furniture/sheet.ts';
import { signatureBoxes } from './furniture/signatures.ts';
import { table } from './furniture/table.ts';
import { cell } from './furniture/table-rows.ts';
import { takenIn } from './furniture/taken-in.ts';
import { recordedClearances } from './readings.ts';

/** The record of the whole job, signed by customer and shop at handover. */
export function drawWorkOrder(content: WorkOrder, fingerprint: string): Uint8Array {
  return fullPages(content, fingerprint, (sheet) => [
    parties(sheet),
    ...doNotRun(sheet, content),
    takenIn(sheet, content),
    ...findings(sheet, content.findings),
    section(sheet, 'What was done', [paragraph(sheet, content.workDone)], {
      ...(content.workKind !== undefined && { aside: content.workKind }),
    }),
    ...decisions(sheet, content.decisions),
    ...recordedClearances(sheet, content),
    ...holdPoints(sheet, content.holdPoints),
    ...testRun(sheet, content.testRun),
    ...photosOnRecord(sheet, content.photos),
    section(sheet, billHeading(content), [
      billLines(sheet, content.lines),
      totalsBlock(sheet, content.totals, paymentsAndDue(sheet, content)),
    ]),
    ...approvals(sheet, content.approvals),
    ...passedOver(sheet, content.passedOver),
    ...beforeSigning([...cautions(sheet, content), ...afterwards(sheet, content)]),
    signing(sheet, content, fingerprint),
  ]);
}

/** Above everything that is told of the work: whoever reads no further must have read this. */
function doNotRun(sheet: Sheet, content: WorkOrder): Block[] {
  if (content.doNotRun === undefined) return [];
  return [cautionBox(sheet, [content.doNotRun, NOT_TO_BE_RUN], 'DO NOT RUN')];
}

/** Signatures, what they are put to, and the fingerprint of it: never parted by a page. */
function signing(sheet: Sheet, content: WorkOrder, fingerprint: string): Block {
  return section(
    sheet,
    'Signed at handover',
    [
      paragraph(
        sheet,
        `The customer has received the machine${content.leftWith.length > 0 ? ', what was left with it,' : ''} and a copy of this work order. The shop states that work and readings are recorded here as they were done and taken.`,
      ),
      signatureBoxes(sheet, [
        { label: 'Customer', signature: content.customerSignature },
        { label: 'For the shop', signature: content.shopSignature },
      ]),
      paragraph(sheet, `Fingerprint   ${fingerprint}`, STYLE.fingerprint),
      paragraph(
        sheet,
        `The fingerprint is the SHA-256 of ${recordName(content)}, attached to the PDF: all that is recorded here. One figure changed, and it is another.`,
        STYLE.soft,
      ),
    ],
    { gap: 5, together: true },
  );
}

const OUTCOME_WORDS = {
  passed: 'passed',
  overridden: 'overridden',
  open: 'left open',
} satisfies Record<HoldPointLine['outcome'], string>;

const OUTCOME_SIGNS = { passed: 'within', overridden: 'too-close', open: 'no-band' } as const;

/** What is to be said of a hold point besides who passed it and when. */
const holdPointRemark = (line: HoldPointLine): string =>
  [
    line.detail,
    line.gauges,
    line.doneBefore.length > 0 && `Done before: ${line.doneBefore.join('; ')}`,
    line.openedAgain && `Open again: undone by “${line.openedAgain}”`,
    line.reason && `Reason: ${line.reason}`,
  ]
    .filter(Boolean)
    .join('; ');

function holdPoints(sheet: Sheet, lines: HoldPointLine[]): Block[] {
  if (lines.length === 0) return [];
  const block = table(sheet, {
    pad: 2,
    columns: [
      { heading: 'Done', width: 'fit', align: 'right' },
      { heading: 'Hold point', width: 1 },
      { heading: 'Outcome', width: 'fit' },
      { heading: 'By', width: 'fit' },
      { heading: 'When', width: 'fit' },
      { heading: 'After', width: 'fit', align: 'right' },
    ],
    rows: lines.map((line) => ({
      cells: [
        cell(line.order === null ? '–' : `${line.order}.`),
        cell(line.label),
        {
          paragraphs: [{ text: OUTCOME_WORDS[line.outcome], style: STYLE.cell }],
          sign: OUTCOME_SIGNS[line.outcome],
        },
        cell(line.by || '–'),
        cell(line.at ? sheet.writing.instant(line.at) : '–'),
        cell(line.after || '–'),
      ],
      remark: holdPointRemark(line),
    })),
  });
  const note = paragraph(
    sheet,
    'Numbered in the order in which they were done; “After” is the time since the one before.',
    STYLE.soft,
  );
  return [section(sheet, 'Hold points', [{ ...block, endKeepsNext: true }, note])];
}

function testRun(sheet: Sheet, run: TestRunRecord | null): Block[] {
  if (run === null) return [];
  const aside = `${run.by}, ${sheet.writing.instant(run.at)}`;
  const rows = run.facts.map(({ name, value }): [string, string] => [
    name,
    datesWritten(value, sheet.writing.date),
  ]);
  const heading = run.passed ? 'Test run: passed' : 'Test run: not passed';
  return [section(sheet, heading, [facts(sheet, rows)], { aside })];
}

/** What both sign for although it was not settled. */
function passedOver(sheet: Sheet, matters: WorkOrder['passedOver']): Block[] {
  if (matters.length === 0) return [];
  const rows = matters.map(({ says, items, reason }): [string, string] => [
    says,
    [items.join('; '), `Reason: ${reason}`].join('\n'),
  ]);
  return [section(sheet, 'Handed over with', [facts(sheet, rows)])];
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

function cautions(sheet: Sheet, content: WorkOrder): Block[] {
  return content.cautions.length > 0 ? [cautionBox(sheet, content.cautions)] : [];
}

/** The end of what is signed for stands above the signatures, so that these are not alone on a page. */
function beforeSigning(blocks: Block[]): Block[] {
  return blocks.map((block, index) => ({ ...block, endKeepsNext: index === blocks.length - 1 }));
}

function billHeading(content: WorkOrder): string {
  return content.invoiceNumber.trim()
    ? `Work and parts, as billed on invoice ${content.invoiceNumber}`
    : 'Work and parts';
}
