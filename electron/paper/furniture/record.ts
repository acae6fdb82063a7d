import type { ApprovalLine } from '../content.ts';
import { STYLE } from './ink.ts';
import { section } from './paragraphs.ts';
import type { Block, Sheet } from './sheet.ts';
import { table } from './table.ts';
import { cell } from './table-rows.ts';

/** Who approved what, how and when; nothing when there were no approvals. */
export function approvals(sheet: Sheet, lines: ApprovalLine[]): Block[] {
  if (lines.length === 0) return [];
  const { money, instant } = sheet.writing;
  const block = table(sheet, {
    columns: [
      { heading: 'Approved by', width: 1.3 },
      { heading: 'How', width: 1 },
      { heading: 'When', width: 'fit' },
      { heading: 'Taken by', width: 1 },
      { heading: 'Paper', width: 'fit' },
      { heading: 'Up to', width: 'fit', align: 'right' },
    ],
    rows: lines.map((line) => ({
      cells: [
        cell(line.by),
        cell(line.how),
        cell(instant(line.at)),
        cell(line.takenBy),
        cell(line.paperNumber),
        cell(money(line.amount), STYLE.cellStrong),
      ],
      remark: line.note && `“${line.note}”`,
    })),
  });
  return [section(sheet, 'Approvals', [block])];
}
