/** Where labels lie on their sheets. Lengths are millimetres, measured from the page's top left corner. */

export const LABEL_PAPERS = ['A4', 'Letter'] as const;
export type LabelPaper = (typeof LABEL_PAPERS)[number];

/** ISO 216 A4 and ANSI/ASME Y14.1 A (Letter). */
export const PAPER_SIZES: Record<LabelPaper, { width: number; height: number }> = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
};

/** A sheet of labels as its package tells it. */
export interface LabelSheet {
  paper: LabelPaper;
  rows: number;
  columns: number;
  labelWidth: number;
  labelHeight: number;
  /** From the paper's edge to the first label. */
  marginLeft: number;
  marginTop: number;
  /** Between two labels. */
  gapAcross: number;
  gapDown: number;
}

/** A sheet to begin with, until the shop says what its own are like. */
export const USUAL_SHEETS: Record<LabelPaper, LabelSheet> = {
  A4: {
    paper: 'A4',
    rows: 8,
    columns: 3,
    labelWidth: 63.5,
    labelHeight: 33.9,
    marginLeft: 7.2,
    marginTop: 12.9,
    gapAcross: 2.5,
    gapDown: 0,
  },
  Letter: {
    paper: 'Letter',
    rows: 10,
    columns: 3,
    labelWidth: 66.7,
    labelHeight: 25.4,
    marginLeft: 4.8,
    marginTop: 12.7,
    gapAcross: 3.2,
    gapDown: 0,
  },
};

export interface LabelPlace {
  /** From 0. */
  page: number;
  x: number;
  y: number;
}

/** What rounding on the package may add up to. */
const SLACK = 0.5;

/** How far the labels reach from the paper's left and top edge. */
const reachOf = (sheet: LabelSheet): { across: number; down: number } => ({
  across:
    sheet.marginLeft + sheet.columns * sheet.labelWidth + (sheet.columns - 1) * sheet.gapAcross,
  down: sheet.marginTop + sheet.rows * sheet.labelHeight + (sheet.rows - 1) * sheet.gapDown,
});

/** By how much the labels reach over the paper's right and lower edge; zero for those that fit. */
export function overhangOf(sheet: LabelSheet): { across: number; down: number } {
  const { across, down } = reachOf(sheet);
  const { width, height } = PAPER_SIZES[sheet.paper];
  const over = (reach: number, edge: number) => (reach > edge + SLACK ? reach - edge : 0);
  return { across: over(across, width), down: over(down, height) };
}

/**
 * The places of so many labels, row by row, the first of them at a label of the first sheet.
 * @param startAt from 1 up to the labels of one sheet
 * @throws RangeError when the sheet has no such label
 */
export function labelPlaces(sheet: LabelSheet, count: number, startAt: number): LabelPlace[] {
  const perPage = sheet.rows * sheet.columns;
  if (startAt < 1 || startAt > perPage)
    throw new RangeError(`A sheet has labels 1 to ${perPage}: ${startAt} is none of them.`);
  return Array.from({ length: count }, (_, index) => {
    const place = startAt - 1 + index;
    const onPage = place % perPage;
    const row = Math.floor(onPage / sheet.columns);
    const column = onPage % sheet.columns;
    return {
      page: Math.floor(place / perPage),
      x: sheet.marginLeft + column * (sheet.labelWidth + sheet.gapAcross),
      y: sheet.marginTop + row * (sheet.labelHeight + sheet.gapDown),
    };
  });
}
