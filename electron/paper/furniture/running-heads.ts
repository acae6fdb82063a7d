import { clippedLines } from './clipped-lines.ts';
import { INK, RULE, STYLE } from './ink.ts';
import { drawLines, heightOf, type Sheet } from './sheet.ts';

/** The slim head of every page but the first: whose paper this is, and about what. */
export function continuationHead(sheet: Sheet) {
  const { shop, customer, machine } = sheet.head;
  const about = [
    customer?.name,
    [machine?.make, machine?.model].filter(Boolean).join(' '),
    customer === undefined ? sheet.title : '',
  ];
  sheet.onContinuation(() => {
    const shopLines = clippedLines(sheet, shop.name, STYLE.label, {
      count: 1,
      width: sheet.width * 0.35,
    });
    const aboutLines = clippedLines(sheet, about.filter(Boolean).join(' · '), STYLE.label, {
      count: 1,
      width: sheet.width * 0.62,
    });
    sheet.structure.artifact(() => {
      drawLines(sheet, shopLines, sheet.left, sheet.y);
      drawLines(sheet, aboutLines, sheet.left + sheet.width, sheet.y, 'right');
    }, 'Pagination');
    sheet.y += Math.max(heightOf(shopLines), heightOf(aboutLines)) + 3;
    sheet.rule(0.5, INK);
    sheet.y += 6;
  });
}

/** Number, fingerprint, if any, and `Page 1 of 3` at the foot of every page. The last thing drawn. */
export function pageFooters(sheet: Sheet, fingerprint: string | null) {
  const { start, count } = sheet.document.bufferedPageRange();
  for (let page = 0; page < count; page += 1) {
    sheet.document.switchToPage(start + page);
    const y = sheet.bottom + 12;
    sheet.rule(0.35, RULE, sheet.left, sheet.width, y - 3);
    const print = fingerprint === null ? [] : sheet.lines(`SHA-256 ${fingerprint}`, STYLE.footer);
    const pages = sheet.lines(`Page ${page + 1} of ${count}`, STYLE.footer);
    const title = sheet.lines(sheet.title, STYLE.footer, sheet.width * 0.26);
    sheet.structure.artifact(() => {
      drawLines(sheet, title, sheet.left, y);
      drawLines(sheet, print, sheet.left + sheet.width / 2, y, 'center');
      drawLines(sheet, pages, sheet.left + sheet.width, y, 'right');
    }, 'Pagination');
  }
}
