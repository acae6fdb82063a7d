import { Anchor, Table, Text } from '@mantine/core';
import { Link } from 'react-router';
import type { HistoryPoint } from '../../../shared/contract/bench/index.ts';
import { display, type Unit } from '../../../shared/trade/index.ts';
import { PHASE_LABELS } from '../../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../../common/badges.tsx';
import { useFormat } from '../../common/format.ts';
import { amountWords } from '../../common/measure/measure-words.ts';
import classes from './history.module.css';

/** The readings of a place as a table: all that the plot shows, in figures. */
export function ReadingsTable(props: {
  readonly caption: string;
  readonly points: readonly HistoryPoint[];
  readonly unit: Unit;
}) {
  const format = useFormat();
  return (
    <div className={classes.scroll}>
      <Table horizontalSpacing="xs">
        <Table.Caption>{props.caption}</Table.Caption>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Date and phase</Table.Th>
            <Table.Th>Hours</Table.Th>
            <Table.Th>Job</Table.Th>
            <Table.Th>Reading</Table.Th>
            <Table.Th>Verdict then</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {props.points.map((point) => (
            <Table.Tr key={`${point.jobId} ${point.phase}`}>
              <Table.Td className={classes.figure}>
                {format.day(`${point.on}T12:00:00Z`)}
                <Text size="sm" c="dimmed">
                  {PHASE_LABELS[point.phase].toLowerCase()}
                </Text>
              </Table.Td>
              <Table.Td>{point.hours ?? '–'}</Table.Td>
              <Table.Td>
                <Anchor component={Link} to={`/job/${point.code}/bench`}>
                  {point.code}
                </Anchor>
              </Table.Td>
              <Table.Td className={classes.figure}>
                {display(point.value, props.unit)}
                {point.uncertainty > 0 && ` ± ${amountWords(point.uncertainty, props.unit)}`}
              </Table.Td>
              <Table.Td>
                <VerdictBadge verdict={point.verdict} />
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </div>
  );
}
