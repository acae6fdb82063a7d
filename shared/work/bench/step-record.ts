import type { MeasuredFeature } from '../features.ts';
import type { BuildStep } from './build-steps.ts';
import type { HoldPointEvent } from './hold-points.ts';

/** What the record says of a step beside who did it and when: in which order, how fast, with which gauges. */

interface Reading {
  feature: MeasuredFeature;
  gauge: { name: string } | null;
}

interface Pull {
  feature: MeasuredFeature;
  /** From 1; 0 marks a sequence that was begun anew. */
  stage: number;
  at: string;
  wrench: string | null;
}

export interface StepOrder {
  /** From 1. */
  order: number;
  /** Since the step that was done before it; null for the first. */
  seconds: number | null;
}

const secondsBetween = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / 1000);

/**
 * The order in which the steps that stand as done were done: that of the event which each stands by.
 * @param events of the job, oldest first
 */
export function orderOfSteps(
  done: readonly string[],
  events: readonly (HoldPointEvent & { at: string })[],
): Map<string, StepOrder> {
  const last = done.flatMap((key) => events.findLast((event) => event.key === key) ?? []);
  const inOrder = events.filter((event) => last.includes(event));
  return new Map(
    inOrder.map((event, index) => {
      const before = inOrder[index - 1];
      const seconds = before === undefined ? null : secondsBetween(before.at, event.at);
      return [event.key, { order: index + 1, seconds }];
    }),
  );
}

export interface GaugesOfStep {
  gauges: string[];
  /** Something of it was measured or tightened without saying with what. */
  gaugeNotNamed: boolean;
  pulls: { count: number; seconds: number } | null;
}

/**
 * The gauges that the readings and pulls of a step name.
 * @param readings final ones that stand
 * @param pulls of the job, oldest first
 */
export function gaugesOfStep(
  { kind, needs }: Pick<BuildStep, 'kind' | 'needs'>,
  readings: readonly Reading[],
  pulls: readonly Pull[],
): GaugesOfStep {
  const taken = readings.filter(({ feature }) => needs.includes(feature));
  const pulled = kind === 'torque' ? pulls.filter((each) => isOf(each, needs)) : [];
  const names = [
    ...taken.map(({ gauge }) => gauge?.name ?? ''),
    ...pulled.map(({ wrench }) => wrench ?? ''),
  ];
  const [first] = pulled;
  const last = pulled.at(-1);
  return {
    gauges: [...new Set(names.filter((name) => name !== ''))],
    gaugeNotNamed: names.includes(''),
    pulls:
      first === undefined || last === undefined
        ? null
        : { count: pulled.length, seconds: secondsBetween(first.at, last.at) },
  };
}

const isOf = ({ feature, stage }: Pull, needs: readonly MeasuredFeature[]) =>
  stage > 0 && needs.includes(feature);

/** `Wrench T1; 8 pulls in 9 s`, `no gauge named`: what was measured or tightened with; empty when nothing was. */
export const gaugesInWords = ({ gauges, gaugeNotNamed, pulls }: GaugesOfStep): string =>
  [
    ...gauges,
    gaugeNotNamed ? (pulls === null ? 'no gauge named' : 'no wrench named') : '',
    pulls === null ? '' : `${pulls.count} pulls in ${durationWords(pulls.seconds)}`,
  ]
    .filter(Boolean)
    .join('; ');

/** `9 s`, `4 min 05 s`, `2 h 10 min`: how long a step took. @param seconds zero or more, whole */
export function durationWords(seconds: number): string {
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  if (hours >= 24) return `${Math.floor(hours / 24)} d ${hours % 24} h`;
  if (hours > 0) return `${hours} h ${String(minutes).padStart(2, '0')} min`;
  if (minutes > 0) return `${minutes} min ${String(seconds % 60).padStart(2, '0')} s`;
  return `${seconds} s`;
}
