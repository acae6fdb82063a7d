import type { PaperContent, PaperKind } from './content.ts';

const WORDS = {
  'claim-ticket': 'Claim ticket',
  tag: 'Tag',
  estimate: 'Estimate',
  invoice: 'Invoice',
  'credit-note': 'Credit note',
  receipt: 'Receipt',
  'work-order': 'Work order',
  'clearance-sheet': 'Clearance sheet',
  statement: 'Statement',
  'purchase-order': 'Purchase order',
} satisfies Record<PaperKind, string>;

/** What a paper of this kind is called. */
export function paperKindWords(kind: PaperKind): string {
  return WORDS[kind];
}

/** The name of one paper: `Work order W-000042`. */
export function paperTitle(content: PaperContent): string {
  return `${WORDS[content.kind]} ${content.number}`;
}

/** A file name that every file system takes: `work-order-W-000042.pdf`. */
export function paperFileName(content: PaperContent): string {
  const number = content.number.replaceAll(/[^A-Za-z0-9-]+/g, '-');
  return `${content.kind}-${number}.pdf`;
}
