import { Table, Text } from '@mantine/core';
import type { DerivedOnSheet } from '../../shared/contract/bench/index.ts';
import type { Unit } from '../../shared/trade/index.ts';
import { display } from '../../shared/trade/index.ts';
import { endsOf, uncertaintyOf } from '../../shared/work/bench/derived-verdict.ts';
import { FEATURE_UNITS } from '../../shared/work/features.ts';
import { PHASE_LABELS } from '../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { amountWords } from '../common/measure/measure-words.ts';
import { Sheet } from '../common/sheet.tsx';
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
    <Sheet>
      <Table className={classes.derived}>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Figure</Table.Th>
            <Table.Th>Value</Table.Th>
            <Table.Th>Verdict</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {derived.map((figure) => {
            const unit: Unit = figure.specification?.unit ?? FEATURE_UNITS[figure.feature];
            return (
              <Table.Tr key={`${figure.feature} ${figure.cylinder} ${figure.phase}`}>
                <Table.Th scope="row">
                  <Text fw={600}>
                    {figure.label}
                    {cylinders > 1 && figure.cylinder > 0 && `, cylinder ${figure.cylinder}`}
                  </Text>
                  <Text size="sm" c="dimmed" fw={400}>
                    {PHASE_LABELS[figure.phase].toLowerCase()}
                  </Text>
                </Table.Th>
                <Table.Td>
                  <Text className={classes.value}>
                    {endsOf(figure)
                      .map((end) => display(end, unit))
                      .join(' to ')}
                  </Text>
                  <Text size="sm" c="dimmed">
                    {figure.largest !== null && 'tightest to loosest spot; '}
                    {uncertaintyOf(figure) === 0
                      ? 'no gauge named: taken as exact'
                      : `give or take ${amountWords(uncertaintyOf(figure), unit)}`}
                  </Text>
                </Table.Td>
                <Table.Td>
                  <VerdictBadge verdict={figure.verdict} />
                  <Text size="sm" c="dimmed">
                    {heldAgainst(figure)}
                  </Text>
                </Table.Td>
              </Table.Tr>
            );
          })}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
