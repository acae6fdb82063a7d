import type { Suggestion } from '../../../shared/contract/parts/index.ts';
import type { DraftLine } from './order-draft.ts';

type Amount = (thousandths: number, unit: string) => string;

/**
 * A suggestion as lines of an order. What is not kept on the shelf is ordered for its jobs, each its own
 * line; what whole packs bring beyond that goes to the shelf.
 */
export function suggestedLines(suggestion: Suggestion, quantity: number): DraftLine[] {
  const { part, supplierNumber, packSize, unitCost, special, jobs } = suggestion;
  const line = {
    partId: part.id,
    number: part.number,
    description: part.description,
    unit: part.unit,
    packSize,
    supplierNumber,
    unitCost,
  };
  let left = quantity;
  const forJobs = (special ? jobs : []).flatMap(({ jobId, jobCode, missing, onOrder }) => {
    const share = Math.min(left, Math.max(0, missing - onOrder));
    left -= share;
    return share === 0 ? [] : [{ ...line, quantity: share, jobId, jobCode }];
  });
  return left === 0 ? forJobs : [...forJobs, { ...line, quantity: left, jobId: null, jobCode: '' }];
}

/** Usage in tenths is as fine as anybody orders. */
const tenth = (thousandths: number): number => Math.round(thousandths / 100) * 100;

/** Why so many are suggested, with the figures. */
export function whySuggested(
  { part, usage, point, jobs, typedPoint }: Suggestion,
  amount: Amount,
): string[] {
  const of = (thousandths: number) => amount(thousandths, part.unit);
  const words = jobs.map(
    ({ jobCode, missing, onOrder }) =>
      `${jobCode} misses ${of(missing)}${onOrder === 0 ? '' : `, ${of(onOrder)} on order`}`,
  );
  if (point > 0)
    words.push(
      point === typedPoint
        ? `Reorder at ${of(point)}, as typed on the part`
        : `Reorder at ${of(point)} by usage; ${of(typedPoint)} is typed on the part`,
    );
  if (usage !== null) {
    const { used, weeks, leadDays, duringLead, safety, point: byUsage } = usage;
    words.push(
      `Used ${of(used)} in ${weeks} weeks: ${of(tenth(duringLead))} in ${leadDays} days + ${of(tenth(safety))} for safety, up to ${of(byUsage)}`,
    );
  }
  return words;
}
