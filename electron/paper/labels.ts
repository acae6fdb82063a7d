import type { LabelSettings, LabelSort, LabelSymbol } from '../../shared/contract/parts/index.ts';
import { type LabelPlace, labelPlaces, PAPER_SIZES } from '../../shared/work/parts/label-layout.ts';
import type { PaperHead } from './content.ts';
import { code128, QUIET_MODULES } from './furniture/code-128.ts';
import { MILLIMETRE } from './furniture/ink.ts';
import { drawLabel, type LabelBox, symbolRoom } from './furniture/label.ts';
import { qrModules } from './furniture/qr-code.ts';
import { Sheet } from './furniture/sheet.ts';

/** What stands on one label. */
export interface Label {
  /** What the symbol says, and the largest thing to read. */
  number: string;
  description: string;
  bin: string;
  /** As it is written, or empty. */
  price: string;
}

export interface LabelJob {
  sort: LabelSort;
  form: 'sheet' | 'single';
  startAt: number;
  settings: LabelSettings;
  labels: readonly Label[];
}

/** Bars and modules narrower than this are lost between a laser printer and a plain reader, mm. */
const NARROWEST = 0.19;
/** Code 128 in its ASCII part: what every reader gives back as it stood. */
const IN_BARS = /^[\x20-\x7e]+$/;

const sizeOf = ({ form, settings: { sheet, single } }: LabelJob) =>
  form === 'sheet'
    ? { width: sheet.labelWidth, height: sheet.labelHeight }
    : { width: single.width, height: single.height };

/** Width of one module of a number's symbol on a label of this size, mm; nothing where it has no symbol. */
function moduleOf(number: string, symbol: LabelSymbol, size: { width: number; height: number }) {
  const room = symbolRoom(size, symbol);
  if (symbol === 'qr') return room / qrModules(number);
  return IN_BARS.test(number) ? room / (code128(number).modules + QUIET_MODULES * 2) : 0;
}

/** The numbers whose symbol no reader could be trusted with on labels of this size. */
export function unreadableNumbers(job: LabelJob): string[] {
  const size = sizeOf(job);
  const numbers = new Set(job.labels.map(({ number }) => number));
  return [...numbers].filter((number) => moduleOf(number, job.settings.symbol, size) < NARROWEST);
}

/** Draws labels at their places on sheets, or each as a page of its own from a roll. */
export function drawLabels(head: PaperHead, job: LabelJob): { pdf: Uint8Array; pages: number } {
  const { form, sort, settings, labels, startAt } = job;
  const size = sizeOf(job);
  const page = form === 'sheet' ? PAPER_SIZES[settings.sheet.paper] : size;
  const places: LabelPlace[] =
    form === 'sheet'
      ? labelPlaces(settings.sheet, labels.length, startAt)
      : labels.map((_, index) => ({ page: index, x: 0, y: 0 }));
  const sheet = new Sheet({
    head,
    title: sort === 'shelf' ? 'Shelf labels' : 'Part labels',
    size: [page.width * MILLIMETRE, page.height * MILLIMETRE],
    margins: { top: 0, bottom: 0, left: 0, right: 0 },
  });
  let drawn = 0;
  for (const [index, label] of labels.entries()) {
    const place = places[index];
    if (place === undefined) continue;
    while (drawn < place.page) {
      sheet.nextPage();
      drawn += 1;
    }
    const box: LabelBox = {
      x: place.x * MILLIMETRE,
      y: place.y * MILLIMETRE,
      width: size.width * MILLIMETRE,
      height: size.height * MILLIMETRE,
    };
    drawLabel(sheet, box, { label, sort, symbol: settings.symbol });
  }
  return { pdf: sheet.finish(), pages: drawn + 1 };
}
