import type { ProposedLine } from './deciding/decision-proposals.ts';
import { CHECK_LABELS, type Check, type WorkWanted } from './diagnosis.ts';

const ONE = 1000;

/**
 * The lines of an estimate that follow from what a diagnosis found. Put there by a person, never by
 * themselves; what two findings ask for stands once.
 * @param labourRate minor units an hour
 */
export function linesFromFindings(
  findings: readonly { check: Check; work: readonly WorkWanted[] }[],
  labourRate: number,
): ProposedLine<never>[] {
  const wanted = findings.flatMap(({ check, work }) => work.map((each) => ({ check, ...each })));
  const same = Map.groupBy(wanted, ({ kind, description }) => `${kind} ${description}`);
  return [...same.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { kind, description } = first;
    const isLabour = kind === 'labour';
    const checks = [...new Set(group.map(({ check }) => CHECK_LABELS[check]))].join(', ');
    return [
      {
        kind,
        description,
        part: null,
        quantity: ONE,
        unit: isLabour ? 'h' : 'pc',
        unitPrice: isLabour ? labourRate : 0,
        priceToSet: !isLabour,
        note: `${checks}. ${isLabour ? 'One hour is written in: set the hours.' : 'Price to be set.'}`,
      },
    ];
  });
}
