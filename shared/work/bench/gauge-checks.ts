/** What the checks of a gauge say of it, and of the readings that it took. Dates are the shop's. */

export interface GaugeCheck {
  on: string;
  good: boolean;
  certificate: string;
  dueOn: string | null;
}

/** What the register says of a gauge that was never checked here. */
export interface RegisteredCalibration {
  calibratedOn: string | null;
  calibrationDue: string | null;
  certificate: string;
}

/** Oldest first; of two checks of one day the later one decides, as they are handed in. */
const inOrder = <C extends GaugeCheck>(checks: readonly C[]): C[] =>
  checks.toSorted((a, b) => a.on.localeCompare(b.on));

/** Calibration as the last good check leaves it, and the day that the gauge was found bad, if it still is. */
export function calibrationOf(
  register: RegisteredCalibration,
  checks: readonly GaugeCheck[],
): RegisteredCalibration & { foundBadOn: string | null } {
  const ordered = inOrder(checks);
  const good = ordered.findLast((check) => check.good);
  const runOfBad = ordered.slice(ordered.findLastIndex((check) => check.good) + 1);
  return {
    ...(good === undefined
      ? register
      : {
          calibratedOn: good.on,
          calibrationDue: good.dueOn,
          certificate: good.certificate === '' ? register.certificate : good.certificate,
        }),
    foundBadOn: runOfBad[0]?.on ?? null,
  };
}

/** From the last good check to the day that a gauge was found bad: nobody knows since when it was. */
export interface DoubtfulSpan {
  /** Null when it was never found good: from the first reading on. */
  since: string | null;
  badOn: string;
  /** The good check that put it into use again; null while it is out of use. */
  until: string | null;
}

/** Every time that the gauge was found bad, oldest first. */
export function doubtfulSpans(
  register: Pick<RegisteredCalibration, 'calibratedOn'>,
  checks: readonly GaugeCheck[],
): DoubtfulSpan[] {
  const spans: DoubtfulSpan[] = [];
  let since = register.calibratedOn;
  let open: DoubtfulSpan | null = null;
  for (const { on, good } of inOrder(checks)) {
    if (good) {
      if (open !== null) open.until = on;
      open = null;
      since = on;
    } else if (open === null) {
      // A calibration that the register claims for after the bad check is no witness for before it.
      open = { since: since !== null && since <= on ? since : null, badOn: on, until: null };
      spans.push(open);
    }
  }
  return spans;
}

/** Whether a reading of that day is in doubt. Days count whole: nobody knows what came first. */
export const inDoubt = (day: string, { since, until }: DoubtfulSpan): boolean =>
  (since === null || day >= since) && (until === null || day <= until);
