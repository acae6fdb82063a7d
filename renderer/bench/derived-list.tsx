import { Text } from '@mantine/core';
import type { DerivedOnSheet } from '../../shared/contract/bench/index.ts';
import type { Unit } from '../../shared/trade/index.ts';
import { display } from '../../shared/trade/index.ts';
import { FEATURE_UNITS } from '../../shared/work/features.ts';
import { PHASE_LABELS } from '../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { amountWords } from '../common/measure/measure-words.ts';
import classes from './bench.module.css';
import { heldAgainst } from './derived-words.ts';

/** Figures that follow from the readings, with their uncertainty and verdict. */
export function DerivedList({
  derived,
  cylinders,
}: {
  readonly derived: readonly DerivedOnSheet[];
  readonly cylinders: number;
}) {
  return (
    <table className={classes.derived}>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">Value</th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {derived.map((figure) => {
          const unit: Unit = figure.specification?.unit ?? FEATURE_UNITS[figure.feature];
          return (
            <tr key={`${figure.feature} ${figure.cylinder} ${figure.phase}`}>
              <th scope="row">
                <Text fw={600}>
                  {figure.label}
                  {cylinders > 1 && figure.cylinder > 0 && `, cylinder ${figure.cylinder}`}
                </Text>
                <Text size="sm" c="dimmed" fw={400}>
                  {PHASE_LABELS[figure.phase].toLowerCase()}
                </Text>
              </th>
              <td>
                <Text className={classes.value}>{display(figure.value, unit)}</Text>
                <Text size="sm" c="dimmed">
                  {figure.uncertainty === 0
                    ? 'no gauge named: taken as exact'
                    : `give or take ${amountWords(figure.uncertainty, unit)}`}
                </Text>
              </td>
              <td>
                <VerdictBadge verdict={figure.verdict} />
                <Text size="sm" c="dimmed">
                  {heldAgainst(figure)}
                </Text>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
