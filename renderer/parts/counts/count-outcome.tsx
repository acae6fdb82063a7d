import { Anchor, Stack, Table, Text } from '@mantine/core';
import { Link } from 'react-router';
import type { CountLine, StockCount } from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { useMoney } from '../../common/shop.tsx';
import classes from './counts.module.css';
import { ExplainDifference } from './explain-difference.tsx';
import { useAmount } from './use-amount.ts';

/** A counted part beside what should have been there. */
export type ClosedLine = CountLine & {
  counted: number;
  outcome: NonNullable<CountLine['outcome']>;
};

const isClosed = (line: CountLine): line is ClosedLine =>
  line.counted !== null && line.outcome !== null;

/** What came of a count: differences to explain, those that are, and what agrees. */
export function CountOutcome({ count }: { count: StockCount }) {
  const lines = count.lines.filter(isClosed);
  const open = lines.filter(
    ({ outcome: { difference, explanation } }) => difference !== 0 && explanation === '',
  );
  const explained = lines.filter(({ outcome }) => outcome.explanation !== '');
  const agree = lines.filter(
    ({ outcome: { difference, explanation } }) => difference === 0 && explanation === '',
  );
  return (
    <Stack>
      {open.length > 0 ? (
        <Card title="Differences to explain">
          <ul className={classes.differences}>
            {open.map((line) => (
              <ExplainDifference key={line.partId} countId={count.id} line={line} />
            ))}
          </ul>
        </Card>
      ) : (
        <Text role="status" fw={600}>
          {explained.length === 0 ? 'Everything agrees.' : 'Every difference is explained.'}
        </Text>
      )}
      {explained.length > 0 && <Lines title="Explained" lines={explained} />}
      {agree.length > 0 && <Lines title="Agree" lines={agree} />}
    </Stack>
  );
}

function Lines({ title, lines }: { title: string; lines: readonly ClosedLine[] }) {
  const { amount, signed } = useAmount();
  const money = useMoney();
  const differ = lines.some(({ outcome }) => outcome.explanation !== '');
  return (
    <Card title={title} flush>
      <div className={classes.scroll}>
        <Table className={classes.counts} verticalSpacing={6}>
          <Table.Thead>
            <Table.Tr>
              <Table.Th>Number</Table.Th>
              <Table.Th>Part</Table.Th>
              <Table.Th className={classes.figure}>Counted</Table.Th>
              <Table.Th className={classes.figure}>Expected</Table.Th>
              {differ && (
                <>
                  <Table.Th className={classes.figure}>Difference</Table.Th>
                  <Table.Th className={classes.figure}>Worth</Table.Th>
                  <Table.Th>Explanation</Table.Th>
                </>
              )}
            </Table.Tr>
          </Table.Thead>
          <Table.Tbody>
            {lines.map(({ partId, number, description, unit, counted, outcome }) => (
              <Table.Tr key={partId}>
                <Table.Td className={classes.number}>
                  <Anchor inherit component={Link} to={`/part/${partId}`}>
                    {number}
                  </Anchor>
                </Table.Td>
                <Table.Td>{description}</Table.Td>
                <Table.Td className={classes.figure}>{amount(counted, unit)}</Table.Td>
                <Table.Td className={classes.figure}>{amount(outcome.expected, unit)}</Table.Td>
                {differ && (
                  <>
                    <Table.Td className={classes.figure}>
                      {outcome.difference === 0 ? 'none' : signed(outcome.difference, unit)}
                    </Table.Td>
                    <Table.Td className={classes.figure}>
                      {outcome.worth === null ? '–' : money(outcome.worth)}
                    </Table.Td>
                    <Table.Td>{outcome.explanation}</Table.Td>
                  </>
                )}
              </Table.Tr>
            ))}
          </Table.Tbody>
        </Table>
      </div>
    </Card>
  );
}
