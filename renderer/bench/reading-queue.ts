import type { Reading } from '../../shared/contract/bench/index.ts';
import type { GaugeId, JobId, ReadingId } from '../../shared/contract/ids.ts';
import type { LashPosition } from '../../shared/work/bench/lash-position.ts';
import type { ReadingSlipKind } from '../../shared/work/bench/question-reading.ts';
import type { MeasuredFeature } from '../../shared/work/features.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import type { SheetBand } from '../common/measure/measure-words.ts';
import type { BenchUnit } from './bench-habits.ts';

/**
 * Readings on their way to the desk. Each has its place from the moment of its Enter, whatever becomes of
 * those before it: a gauge that types may send the next one before the desk has answered.
 */

/** What a reading is sent with. */
export interface ReadingInput {
  readonly jobId: JobId;
  readonly feature: MeasuredFeature;
  readonly place: string;
  readonly phase: Phase;
  readonly text: string;
  readonly unit: BenchUnit;
  readonly gaugeId: GaugeId | null;
  readonly temperature: number | null;
  readonly position: LashPosition | null;
  readonly keepAsTyped: boolean;
  readonly typed: { readonly text: string; readonly unit: BenchUnit } | null;
  readonly supersedes: ReadingId | null;
}

export interface SentReading {
  readonly id: number;
  readonly input: ReadingInput;
  /** Of its place, as it is called on the sheet. */
  readonly label: string;
  readonly band: SheetBand;
}

export interface AskedReading extends SentReading {
  readonly slip: {
    readonly kind: ReadingSlipKind;
    /** In `unit`; null where nothing explains the reading. */
    readonly likely: number | null;
    readonly unit: BenchUnit;
    /** The readings beside it, base unit. */
    readonly beside: readonly number[];
  };
}

export interface RefusedReading extends SentReading {
  readonly error: unknown;
}

export interface ReadingQueue {
  /** Oldest first; the first is under way. */
  readonly waiting: readonly SentReading[];
  /** Those that a person has to answer for, oldest first. */
  readonly asked: readonly AskedReading[];
  /** Those that the desk did not take, oldest first. */
  readonly refused: readonly RefusedReading[];
  /** The last one that was recorded on this visit. */
  readonly last: Reading | null;
}

export const EMPTY_QUEUE: ReadingQueue = { waiting: [], asked: [], refused: [], last: null };

export type QueueEvent =
  | { readonly what: 'sent'; readonly reading: SentReading }
  | { readonly what: 'recorded'; readonly id: number; readonly reading: Reading }
  | { readonly what: 'asked'; readonly reading: AskedReading }
  | { readonly what: 'refused'; readonly reading: RefusedReading }
  /** It was answered, or goes back to the field. */
  | { readonly what: 'settled'; readonly id: number };

const without = <R extends SentReading>(readings: readonly R[], id: number): R[] =>
  readings.filter((reading) => reading.id !== id);

export function afterEvent(queue: ReadingQueue, event: QueueEvent): ReadingQueue {
  switch (event.what) {
    case 'sent':
      return { ...queue, waiting: [...queue.waiting, event.reading] };
    case 'recorded':
      return { ...queue, waiting: without(queue.waiting, event.id), last: event.reading };
    case 'asked':
      return {
        ...queue,
        waiting: without(queue.waiting, event.reading.id),
        asked: [...queue.asked, event.reading],
      };
    case 'refused':
      return {
        ...queue,
        waiting: without(queue.waiting, event.reading.id),
        refused: [...queue.refused, event.reading],
      };
    case 'settled':
      return {
        ...queue,
        asked: without(queue.asked, event.id),
        refused: without(queue.refused, event.id),
      };
  }
}

/** Places of a feature and phase that have a reading on its way, or one that waits for an answer. */
export const placesTaken = (
  { waiting, asked, refused }: ReadingQueue,
  feature: MeasuredFeature,
  phase: Phase,
): ReadonlySet<string> =>
  new Set(
    [...waiting, ...asked, ...refused]
      .filter(({ input }) => input.feature === feature && input.phase === phase)
      .map(({ input }) => input.place),
  );
