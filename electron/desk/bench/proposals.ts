import { findingsOf } from '../../../db/queries/findings.ts';
import { shopOf } from '../../../db/queries/office.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { Proposal } from '../../../shared/contract/bench/index.ts';
import {
  type ProposedLine,
  proposalsFrom,
} from '../../../shared/work/bench/deciding/decision-proposals.ts';
import { USUAL_ALLOWANCE } from '../../../shared/work/bench/deciding/decision-sizes.ts';
import { linesFromFindings } from '../../../shared/work/bench/diagnosis-lines.ts';
import { os } from '../implementer.ts';
import { factsOf } from './decision-facts.ts';

type StockedPart = Pick<
  ReturnType<typeof factsOf>['shelf'][number],
  'id' | 'number' | 'cost' | 'sellsBy'
>;

/** A line with what the shelf says of its part. */
const asProposal = ({ part, ...line }: ProposedLine<StockedPart>): Proposal => ({
  ...line,
  // An hour of labour that has no rate is not free.
  priceToSet: line.priceToSet || (line.kind === 'labour' && line.unitPrice === 0),
  partId: part?.id ?? null,
  partNumber: part?.number ?? '',
  unitCost: part?.cost ?? null,
  priceFrom: part?.sellsBy ?? (line.kind === 'labour' ? 'labour-rate' : 'typed'),
});

/**
 * The estimate lines that follow from the decisions that stand.
 * @param since only from those that were taken after this instant
 */
export function proposedLines(
  store: ReadStore,
  jobId: string,
  since = '',
): { lines: Proposal[]; stops: boolean } {
  const { standing, shelf, models, sheet } = factsOf(store, jobId, USUAL_ALLOWANCE);
  const stops = standing.some(({ choice }) => choice === 'stop');
  const followed = stops ? [] : standing.filter(({ at }) => at > since);
  const lines = proposalsFrom(followed, {
    parts: shelf,
    models,
    cylinders: sheet.cylinders,
    labourRate: shopOf(store).labourRate,
  }).map(asProposal);
  return { lines, stops };
}

/**
 * The estimate lines that follow from what the diagnosis found.
 * @param since only from what was found after this instant
 */
export const foundLines = (store: ReadStore, jobId: string, since = ''): Proposal[] =>
  linesFromFindings(
    findingsOf(store, jobId).standing.filter(({ at }) => at > since),
    shopOf(store).labourRate,
  ).map(asProposal);

export const proposals = os.bench.proposals.handler(({ input, context }) => {
  const { lines, stops } = proposedLines(context.store.read, input.jobId);
  return { lines, moveTo: stops ? ('stopped' as const) : null };
});
