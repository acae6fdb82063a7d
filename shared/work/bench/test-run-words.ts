import { display, displayNumber } from '../../trade/index.ts';
import type { RunFeature } from '../features.ts';
import { type SpeedFound, speedWords } from './run-speed.ts';
import { type CheckOutcome, LEAK_PATH_LABELS, type TestRunFindings } from './test-run.ts';
import {
  COMPRESSION_SHARE,
  type CompressionComparison,
  compareCompression,
} from './test-run-rules.ts';

/** A test run in words, as screens and papers say it. */

export const OUTCOME_LABELS: Record<CheckOutcome, string> = {
  works: 'Works',
  fails: 'Fails',
  'not-fitted': 'Not fitted',
  'not-tried': 'Not tried',
};

/** The same of a fuel system: it is dry, or it is not. */
export const FUEL_LABELS: Record<CheckOutcome, string> = {
  ...OUTCOME_LABELS,
  works: 'Dry',
  fails: 'Leaks',
  'not-tried': 'Not looked at',
};

/** A pressure in both units of the trade. */
export const pressureWords = (kilopascals: number): string =>
  `${display(kilopascals, 'kPa')} (${displayNumber(kilopascals, 'psi')} psi)`;

/** Two cylinders held against each other, in a sentence. */
export function compressionSentence(compared: CompressionComparison): string {
  const share = Math.floor(compared.share * 1000) / 10;
  const least = COMPRESSION_SHARE * 100;
  const figures = `Cylinder ${compared.lowestCylinder} has ${share} % of cylinder ${compared.highestCylinder}`;
  return compared.even
    ? `${figures}: even enough (${least} % at least).`
    : `${figures}: uneven, ${least} % at least are wanted. Test the low one again with a little oil in it, then with the leak-down tester.`;
}

/** What was found, without what nobody measured. */
export function testRunFacts(
  findings: TestRunFindings,
  speeds: readonly SpeedFound[],
  /** Why it could not be signed off as passed. */
  against: readonly string[],
): [name: string, words: string][] {
  const { compression, leakDown } = findings;
  const cylinder = (index: number) =>
    compression.length > 1 || leakDown.length > 1 ? `cylinder ${index + 1}: ` : '';
  const compared = compareCompression(compression);
  // A run from before speeds were judged has the figure alone.
  const speed = (feature: RunFeature, value: number | null) => {
    const judged = speeds.find((each) => each.feature === feature);
    if (judged !== undefined) return speedWords(judged);
    return value === null ? null : display(value, 'rpm');
  };
  const facts: [string, string | null][] = [
    ['Stop switch', OUTCOME_LABELS[findings.stopSwitch]],
    ['Safety interlocks', OUTCOME_LABELS[findings.interlocks]],
    ['Governor', OUTCOME_LABELS[findings.governor]],
    ['Chain brake', findings.chainBrake && OUTCOME_LABELS[findings.chainBrake]],
    ['Fuel system', findings.fuelTight && FUEL_LABELS[findings.fuelTight]],
    ['Not fitted because', findings.notFittedWhy],
    ['Blade stands after', findings.bladeStop === null ? null : `${findings.bladeStop} s`],
    ['Idle', speed('idle-speed', findings.idleSpeed)],
    ['Top, no load', speed('top-speed', findings.topSpeed)],
    [
      'Compression',
      compression
        .flatMap((pressure, index) =>
          pressure === null ? [] : [`${cylinder(index)}${pressureWords(pressure)}`],
        )
        .join('; '),
    ],
    ['Held against each other', compared === null ? null : compressionSentence(compared)],
    [
      'Leak-down',
      leakDown
        .flatMap(({ percent, path }, index) =>
          percent === null
            ? []
            : [`${cylinder(index)}${displayNumber(percent, '%')} %, ${LEAK_PATH_LABELS[path]}`],
        )
        .join('; '),
    ],
    [
      'Output',
      [
        findings.outputVolts === null ? '' : display(findings.outputVolts, 'V'),
        findings.outputAmps === null ? '' : display(findings.outputAmps, 'A'),
      ]
        .filter(Boolean)
        .join(', '),
    ],
    ['Leaks', findings.leaks],
    ['Note', findings.note],
    ['Against passing', against.join('; ')],
  ];
  return facts.flatMap(([name, words]): [string, string][] =>
    words === null || words === '' ? [] : [[name, words]],
  );
}
