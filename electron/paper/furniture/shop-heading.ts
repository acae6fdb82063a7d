import { drawBarcode } from './barcode.ts';
import { INK, STYLE } from './ink.ts';
import { drawLines, type Sheet } from './sheet.ts';

const BARCODE = { width: 132, height: 24 };

/** The shop's own heading on the left, what the paper is on the right, with the barcode of its job, if any. */
export function shopHeading(sheet: Sheet, words: string) {
  const { shop, number, issuedAt, issuedBy, job, corrects } = sheet.head;
  const rightEdge = sheet.left + sheet.width;
  const half = sheet.width * 0.5;
  const name = sheet.lines(shop.name, STYLE.shopName, half);
  const reach = [shop.phone, shop.email].filter(Boolean).join('  ·  ');
  const tax = shop.taxNumber && `Tax number ${shop.taxNumber}`;
  const address = [...shop.addressLines, reach, tax].flatMap((text) =>
    sheet.lines(text, STYLE.soft, half),
  );
  const title = sheet.lines(words, STYLE.title, half);
  const by = issuedBy === '' ? '' : ` by ${issuedBy}`;
  const issued = `Issued ${sheet.writing.instant(issuedAt)}${by}`;
  const about = [
    ...sheet.lines(number, STYLE.subheading, half),
    ...sheet.lines(issued, STYLE.soft, half),
  ];
  const correction = corrects
    ? sheet.lines(
        [
          `This paper corrects ${corrects.number}, which is kept as it was (fingerprint ${corrects.fingerprint}).`,
          ...(corrects.reason === undefined ? [] : [`Why: ${corrects.reason}`]),
        ].join(' '),
        STYLE.cellStrong,
      )
    : [];

  const top = sheet.y;
  let left = top;
  sheet.structure.text('P', () => {
    left = drawLines(sheet, name, sheet.left, top) + 2;
    left = drawLines(sheet, address, sheet.left, left);
  });
  let right = top - 3;
  sheet.structure.text('H1', () => {
    right = drawLines(sheet, title, rightEdge, right, 'right');
  });
  sheet.structure.text('P', () => {
    right = drawLines(sheet, about, rightEdge, right, 'right') + 4;
  });
  if (job !== undefined) right = jobCode(sheet, job.code, right);
  sheet.y = Math.max(left, right) + 6;
  sheet.rule(1.4, INK);
  if (correction.length > 0) {
    sheet.y += 6;
    sheet.structure.text('P', () => {
      sheet.y = drawLines(sheet, correction, sheet.left, sheet.y);
    });
    sheet.y += 4;
    sheet.rule(0.5, INK);
  }
}

/** Draws a job's barcode with its code below, and gives the y below that. */
function jobCode(sheet: Sheet, code: string, y: number): number {
  const rightEdge = sheet.left + sheet.width;
  const lines = sheet.lines(`Job ${code}`, STYLE.label, BARCODE.width);
  // The quiet zone is white: it may reach over the margin's edge, so that the bars end flush.
  const quiet = BARCODE.width * 0.09;
  drawBarcode(sheet, code, { x: rightEdge - BARCODE.width + quiet, y, ...BARCODE });
  let below = y + BARCODE.height + 1;
  sheet.structure.text('P', () => {
    below = drawLines(sheet, lines, rightEdge, below, 'right');
  });
  return below;
}
