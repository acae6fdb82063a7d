import type { Store } from '../../../../db/store.ts';

/** A file that is being read in this process. */
export interface Reading {
  /** Lines that were read so far, and how much of the file they are (0 to 1). */
  lines: number;
  share: number;
  /** Set by whoever wants it stopped. */
  stopped: boolean;
  ended: Promise<void>;
}

const underWay = new WeakMap<Store, Map<string, Reading>>();

/** The files that are being read into a store, by id. They are gone with the process that reads them. */
export function readingsOf(store: Store): Map<string, Reading> {
  const known = underWay.get(store) ?? new Map<string, Reading>();
  underWay.set(store, known);
  return known;
}

/** Ends them all, as the end of the program would: they count as stopped. */
export async function endReadings(store: Store): Promise<void> {
  const readings = [...readingsOf(store).values()];
  for (const reading of readings) reading.stopped = true;
  await Promise.all(readings.map(({ ended }) => ended));
}
