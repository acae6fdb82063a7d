import { Text } from '@mantine/core';
import { IconScale } from '@tabler/icons-react';
import type { FeatureOnSheet } from '../../shared/contract/bench/index.ts';
import { display } from '../../shared/trade/index.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import { bandWords } from '../common/measure/measure-words.ts';
import classes from './bench.module.css';

/** '+0.25 mm', '−0.25 mm'. */
const stepWords = (step: number) => `${step < 0 ? '−' : '+'}${display(Math.abs(step), 'mm')}`;

/** Where an oversize or undersize was decided, what holds from then on instead of the book's limits. */
export function DecidedSize({
  feature,
  phase,
  cylinders,
}: {
  readonly feature: FeatureOnSheet;
  readonly phase: Phase;
  readonly cylinders: number;
}) {
  if (phase === 'as-received') return null;
  const moved = [
    ...new Map(
      feature.places.flatMap(({ cylinder, decided }) =>
        decided === null ? [] : [[cylinder, decided] as const],
      ),
    ),
  ];
  return moved.map(([cylinder, decided]) => (
    <div key={cylinder} className={classes.decided}>
      <IconScale size={20} aria-hidden />
      <Text size="sm">
        <strong>
          Decided{cylinders > 1 && `, cylinder ${cylinder}`}: {stepWords(decided.step)}.
        </strong>{' '}
        New: {bandWords(decided, feature.unit)}
        {decided.wearLimit !== null && `, wear limit ${display(decided.wearLimit, feature.unit)}`}.
      </Text>
    </div>
  ));
}
