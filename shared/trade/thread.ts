import type { Thread } from './fastener.ts';
import { plainCharacters } from './keyboard.ts';
import { METRIC_SIZES, UNIFIED_SIZES, type UnifiedSize } from './thread-series.ts';

const MM_PER_INCH = 25.4;

/** A thread as somebody wrote it, with its size in mm. */
export interface NamedThread extends Thread {
  /** Whether ISO 261 or ASME B1.1 has it in its coarse or fine series; others exist. */
  readonly standard: boolean;
}

/** M8, M8×1.25, M 8 x 1,25, M8*1 */
const METRIC = /^M ?(\d+(?:[.,]\d+)?)(?: ?[x×*-] ?(\d*[.,]?\d+))?$/i;
/** 5/16-18, 5/16-18 UNC, No. 10-24, #10-32 UNF, 1/4"-20, 1/4 UNC */
const UNIFIED = /^(?:no\.? ?|# ?)?(\d+(?:\/\d+)?) ?(?:"|in)?(?: ?- ?(\d+))? ?(UNC|UNF|NC|NF)?$/i;

/**
 * The thread that a designation names. Metric with or without its pitch (`M8` is coarse), Unified with
 * its threads per inch, its series (UNC, UNF) or both. 5/16-18 is 7.9375 × 1.4111 mm.
 *
 * @returns diameter and pitch, mm
 * @throws {RangeError} with a sentence for whoever typed it when it names no thread, names it in two
 * ways that contradict each other, or leaves its pitch open
 */
export function parseThread(text: string): NamedThread {
  const plain = plainCharacters(text).replace(/\s+/g, ' ').trim();
  const metric = METRIC.exec(plain);
  if (metric !== null) return metricThread(text, metric[1] ?? '', metric[2]);
  const unified = UNIFIED.exec(plain);
  if (unified !== null) return unifiedThread(text, unified[1] ?? '', unified[2], unified[3]);
  throw new RangeError(
    `‘${text}’ is no thread that is known here: write M8×1.25, 5/16-18 UNC or #10-24.`,
  );
}

const figure = (text: string): number => Number(text.replace(',', '.'));

function metricThread(text: string, diameterText: string, pitchText: string | undefined) {
  const diameter = figure(diameterText);
  const size = METRIC_SIZES.find((each) => each.diameter === diameter);
  if (pitchText === undefined) {
    if (size === undefined)
      throw new RangeError(
        `‘${text}’ has no coarse pitch that is known here: name it, as M9×1.25.`,
      );
    return { diameter, pitch: size.coarse, standard: true };
  }
  const pitch = figure(pitchText);
  if (!(pitch > 0 && pitch < diameter / 2))
    throw new RangeError(`‘${text}’ can’t be: the pitch doesn’t go with the diameter.`);
  return {
    diameter,
    pitch,
    standard: size !== undefined && [size.coarse, ...size.fine].includes(pitch),
  };
}

function unifiedThread(
  text: string,
  name: string,
  perInchText: string | undefined,
  seriesText: string | undefined,
): NamedThread {
  const size = UNIFIED_SIZES.find((each) => each.name === name);
  if (size === undefined)
    throw new RangeError(
      `‘${text}’ is no size of a Unified thread that is known here, from #4 to 1 in.`,
    );
  const series = seriesText?.toUpperCase().endsWith('C') ? 'UNC' : 'UNF';
  const ofSeries = seriesText === undefined ? null : series === 'UNC' ? size.coarse : size.fine;
  const perInch = perInchText === undefined ? ofSeries : Number(perInchText);
  if (perInch === null)
    throw new RangeError(
      `‘${text}’ may be ${size.coarse} or ${size.fine} threads per inch: write ${name}-${size.coarse} or ${name}-${size.fine}.`,
    );
  if (ofSeries !== null && ofSeries !== perInch)
    throw new RangeError(
      `‘${text}’ contradicts itself: ${name} ${series} has ${ofSeries} threads per inch.`,
    );
  const thread = inMillimetres(size, perInch);
  if (!(perInch > 0 && thread.pitch < thread.diameter / 2))
    throw new RangeError(`‘${text}’ can’t be: that many threads don’t go with the diameter.`);
  return { ...thread, standard: [size.coarse, size.fine].includes(perInch) };
}

/** To four decimals, as tables print them: a tenth of a micrometre is nothing to a thread. */
const inMillimetres = ({ inches }: UnifiedSize, perInch: number): Thread => ({
  diameter: Number((inches * MM_PER_INCH).toFixed(4)),
  pitch: Number((MM_PER_INCH / perInch).toFixed(4)),
});

/** Whether two threads are one: diameter and pitch in mm, as exact as a thread is named. */
export const sameThread = (one: Thread, other: Thread): boolean =>
  Math.abs(one.diameter - other.diameter) < 0.02 && Math.abs(one.pitch - other.pitch) < 0.002;

/**
 * What a thread is called: `5/16-18 UNC` where it is a Unified one of the coarse or fine series, else
 * `M8 × 1.25`.
 */
export function threadName(thread: Thread): string {
  for (const size of UNIFIED_SIZES)
    for (const [perInch, series] of [
      [size.coarse, 'UNC'],
      [size.fine, 'UNF'],
    ] as const)
      if (sameThread(inMillimetres(size, perInch), thread))
        return `${unifiedName(size)}-${perInch} ${series}`;
  return `M${thread.diameter} × ${thread.pitch}`;
}

/** Numbered sizes carry their sign: 10 alone would be ten inches to somebody. */
const unifiedName = ({ name, inches }: UnifiedSize): string => (inches < 0.25 ? `#${name}` : name);

/** The threads of small engines that one is likely to mean, by name: coarse and fine, M4 to M14, #8 to 1/2. */
export const USUAL_THREADS: readonly string[] = [
  ...METRIC_SIZES.filter(({ diameter }) => diameter >= 4 && diameter <= 14).flatMap(
    ({ diameter, coarse, fine }) =>
      [coarse, ...fine]
        .filter((pitch) => pitch >= 0.7)
        .map((pitch) => threadName({ diameter, pitch })),
  ),
  ...UNIFIED_SIZES.filter(({ inches }) => inches > 0.15 && inches <= 0.5).flatMap((size) => [
    threadName(inMillimetres(size, size.coarse)),
    threadName(inMillimetres(size, size.fine)),
  ]),
];
