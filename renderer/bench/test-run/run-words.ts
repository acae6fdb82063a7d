import { display, displayNumber } from '../../../shared/trade/index.ts';
import type { CheckOutcome } from '../../../shared/work/test-run.ts';
import {
  COMPRESSION_SHARE,
  type CompressionComparison,
} from '../../../shared/work/test-run-rules.ts';

export const OUTCOME_LABELS: Record<CheckOutcome, string> = {
  works: 'Works',
  fails: 'Fails',
  'not-fitted': 'Not fitted',
  'not-tried': 'Not tried',
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
