import { Anchor, Table, Text, Title } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { Gauge, GaugeReadings } from '../../shared/contract/bench/index.ts';
import { asTyped } from '../../shared/work/bench/reading-in-words.ts';
import { PHASE_LABELS } from '../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../common/badges.tsx';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { Empty, QueryView } from '../common/page.tsx';
import { Sheet } from '../common/sheet.tsx';
import classes from './bench.module.css';

/** Every reading that a gauge touched since its last good check, with its job. */
export function GaugeTouched({ gauge }: { readonly gauge: Gauge }) {
  const touched = useQuery(
    deskQuery.bench.gaugeReadings.queryOptions({ input: { gaugeId: gauge.id } }),
  );
  return (
    <section aria-labelledby="touched">
      <QueryView query={touched}>
        {(data) => (
          <>
            <Title order={2} id="touched" size="h3">
              {data.badOn === null ? 'Readings since its last good check' : 'Readings in doubt'}
            </Title>
            <Span data={data} />
            {data.runs.length > 0 && <TouchedRuns runs={data.runs} />}
            {data.readings.length + data.runs.length === 0 ? (
              <Empty title="None" hint="Nothing was measured with this gauge in that time." />
            ) : (
              data.readings.length > 0 && <Touched data={data} />
            )}
          </>
        )}
      </QueryView>
    </section>
  );
}

function Span({ data }: { readonly data: GaugeReadings }) {
  const format = useFormat();
  const touched = [...data.readings, ...data.runs];
  const jobs = new Set(touched.map(({ jobId }) => jobId)).size;
  const handedOver = new Set(touched.filter((each) => each.handedOver).map(({ jobId }) => jobId))
    .size;
  const counted = [
    data.readings.length > 0 || data.runs.length === 0
      ? `${data.readings.length} ${data.readings.length === 1 ? 'reading' : 'readings'}`
      : '',
    data.runs.length > 0
      ? `${data.runs.length} ${data.runs.length === 1 ? 'test run' : 'test runs'}`
      : '',
  ]
    .filter(Boolean)
    .join(' and ');
  const since = data.since === null ? 'from its first reading' : `from ${format.date(data.since)}`;
  const until = data.until === null ? '' : ` to ${format.date(data.until)}`;
  return (
    <Text c="dimmed" mb="xs">
      {counted} of {jobs} {jobs === 1 ? 'job' : 'jobs'}, {since}
      {until}
      {data.badOn !== null && handedOver > 0 && (
        <>
          {'. '}
          <strong>
            {handedOver === 1 ? 'One machine has' : `${handedOver} machines have`} been handed over.
          </strong>
        </>
      )}
    </Text>
  );
}

/** Runs whose speeds were read from it. */
function TouchedRuns({ runs }: { readonly runs: GaugeReadings['runs'] }) {
  const format = useFormat();
  return (
    <ul className={classes.checks} aria-label="Test runs">
      {runs.map((run) => (
        <li key={run.id} className={classes.check}>
          <Text fw={600}>
            <Anchor component={Link} to={`/job/${run.jobCode}/bench/run`} inherit>
              {run.jobCode}
            </Anchor>{' '}
            {run.machine}
            {run.handedOver && ', handed over'}
          </Text>
          <Text size="sm">
            {run.speeds.map(({ label, words }) => `${label} ${words}`).join('; ')}
          </Text>
          <Text size="sm" c="dimmed">
            {run.passed ? 'Passed' : 'Not passed'}, {run.by}, {format.instant(run.at)}
          </Text>
        </li>
      ))}
    </ul>
  );
}

function Touched({ data }: { readonly data: GaugeReadings }) {
  const format = useFormat();
  return (
    <Sheet>
      <Table highlightOnHover>
        <Table.Thead>
          <Table.Tr>
            <Table.Th>Job</Table.Th>
            <Table.Th>What was measured</Table.Th>
            <Table.Th>Reading</Table.Th>
            <Table.Th>Verdict then</Table.Th>
            <Table.Th>By and when</Table.Th>
          </Table.Tr>
        </Table.Thead>
        <Table.Tbody>
          {data.readings.map((reading) => (
            <Table.Tr key={reading.id}>
              <Table.Td>
                <Anchor component={Link} to={`/job/${reading.jobCode}/bench?at=${reading.feature}`}>
                  {reading.jobCode}
                </Anchor>
                <Text size="sm" c="dimmed">
                  {reading.machine}
                  {reading.handedOver && ', handed over'}
                </Text>
              </Table.Td>
              <Table.Td>
                {reading.featureLabel}
                <Text size="sm" c="dimmed">
                  {[reading.placeLabel, PHASE_LABELS[reading.phase].toLowerCase()]
                    .filter(Boolean)
                    .join(', ')}
                </Text>
              </Table.Td>
              <Table.Td className={classes.earlier}>
                {reading.superseded ? <s>{asTyped(reading)}</s> : asTyped(reading)}
                {reading.superseded && (
                  <Text size="sm" c="dimmed">
                    corrected
                  </Text>
                )}
              </Table.Td>
              <Table.Td>
                <VerdictBadge verdict={reading.verdict} />
              </Table.Td>
              <Table.Td>
                {reading.by}
                <Text size="sm" c="dimmed">
                  {format.instant(reading.at)}
                </Text>
              </Table.Td>
            </Table.Tr>
          ))}
        </Table.Tbody>
      </Table>
    </Sheet>
  );
}
