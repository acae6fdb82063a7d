import { Text } from '@mantine/core';
import { IconScale } from '@tabler/icons-react';
import type { FeatureOnSheet } from '../../shared/contract/bench/index.ts';
import { display } from '../../shared/trade/index.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import { bandWords } from '../common/measure/measure-words.ts';
import classes from './bench.module.css';

/** '+0.25 mm', '−0.25 mm'. */
const stepWords = (step: number) =>
  step === 0 ? 'standard size' : `${step < 0 ? '−' : '+'}${display(Math.abs(step), 'mm')}`;

/** Where an oversize or undersize was decided, now or on an earlier job, what holds instead of the book's. */
export function DecidedSize({
  feature,
  phase,
  cylinders,
}: {
  readonly feature: FeatureOnSheet;
  readonly phase: Phase;
  readonly cylinders: number;
}) {
  const moved = [
    ...new Map(
      feature.places.flatMap(({ cylinder, came, decided }) => {
        const now = phase === 'as-received' ? null : decided;
        const holds = now ?? came;
        return holds === null
          ? []
          : [[cylinder, { holds, word: now === null ? 'As it came' : 'Decided' }] as const];
      }),
    ),
  ];
  return moved.map(([cylinder, { holds, word }]) => (
    <div key={cylinder} className={classes.decided}>
      <IconScale size={20} aria-hidden />
      <Text size="sm">
        <strong>
          {word}
          {cylinders > 1 && `, cylinder ${cylinder}`}: {stepWords(holds.step)}.
        </strong>{' '}
        New: {bandWords(holds, feature.unit)}
        {holds.wearLimit !== null && `, wear limit ${display(holds.wearLimit, feature.unit)}`}.
      </Text>
    </div>
  ));
}
