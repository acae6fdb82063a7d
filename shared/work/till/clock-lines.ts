import { divideRounded, type Rounding } from '../../money/index.ts';
import { hoursOf } from './clock.ts';

/** Clocked time as lines of a bill. Money: integer minor units. */

export interface WorkedTime {
  /** One of the shop's kinds of work, or empty. */
  readonly workKind: string;
  readonly minutes: number;
  /** What an hour of whoever worked costs the shop; zero when nobody has said. */
  readonly hourlyCost: number;
}

export interface WorkRates {
  /** By kind of work. */
  readonly labourRates: readonly { name: string; rate: number }[];
  /** For all that is not among them. */
  readonly labourRate: number;
  readonly rounding: Rounding;
}

/** What an hour of a kind of work is charged at. */
export const rateFor = (
  workKind: string,
  { labourRates, labourRate }: Pick<WorkRates, 'labourRates' | 'labourRate'>,
): number => labourRates.find(({ name }) => name === workKind)?.rate ?? labourRate;

export interface KindOfTime {
  workKind: string;
  minutes: number;
  /** Thousandths of an hour. */
  hours: number;
}

/** Time by kind of work, in the order in which the kinds came up; each sum is rounded once. */
export const timeByKind = (times: readonly WorkedTime[], rounding: Rounding): KindOfTime[] =>
  [...Map.groupBy(times, ({ workKind }) => workKind)].map(([workKind, group]) => {
    const minutes = group.reduce((sum, each) => sum + each.minutes, 0);
    return { workKind, minutes, hours: hoursOf(minutes, rounding) };
  });

/**
 * Labour lines for time that was worked, one for each kind of work, at its rate. The cost of an hour is what
 * those who worked cost on the average of their time, and null when nobody has said. Time that does not come
 * to a thousandth of an hour gives no line.
 */
export const labourLines = (times: readonly WorkedTime[], rates: WorkRates) =>
  timeByKind(times, rates.rounding)
    .filter(({ hours }) => hours > 0)
    .map(({ workKind, minutes, hours }) => ({
      kind: 'labour' as const,
      description: workKind === '' ? 'Labour' : workKind,
      partId: null,
      quantity: hours,
      unit: 'h',
      unitPrice: rateFor(workKind, rates),
      unitCost: hourlyCost(
        times.filter((each) => each.workKind === workKind),
        minutes,
        rates.rounding,
      ),
      priceFrom: 'clocked-time' as const,
      workKind,
      discount: null,
      note: '',
    }));

function hourlyCost(
  times: readonly WorkedTime[],
  minutes: number,
  rounding: Rounding,
): number | null {
  const known = times.filter((each) => each.hourlyCost > 0 || each.minutes === 0);
  if (known.length < times.length) return null;
  const cost = times.reduce(
    (sum, each) => sum + BigInt(each.minutes) * BigInt(each.hourlyCost),
    0n,
  );
  return Number(divideRounded(cost, BigInt(minutes), rounding));
}
