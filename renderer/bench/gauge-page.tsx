import { Anchor, Button, Group, Paper, Stack, Text, Title } from '@mantine/core';
import { IconClipboardCheck } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useParams } from 'react-router';
import type { Gauge, GaugeCheck } from '../../shared/contract/bench/index.ts';
import { GaugeId } from '../../shared/contract/ids.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { GAUGE_KIND_LABELS } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { Empty, Page, QueryView } from '../common/page.tsx';
import classes from './bench.module.css';
import { CalibrationBadge } from './calibration-badge.tsx';
import { GaugeCheckForm } from './gauge-check-form.tsx';
import { GaugeTouched } from './gauge-touched.tsx';
import { WrenchLength } from './wrench-length.tsx';

/** One gauge: how good it is and why, its checks, and the readings that hang on them. */
export function GaugePage() {
  const { id } = useParams();
  const gaugeId = GaugeId.safeParse(id);
  return gaugeId.success ? (
    <KnownGauge id={gaugeId.data} />
  ) : (
    <Page title="Gauge">
      <Empty title="There is no such gauge" hint="Look it up in the list of gauges." />
    </Page>
  );
}

function KnownGauge({ id }: { readonly id: GaugeId }) {
  const record = useQuery(deskQuery.bench.gauge.queryOptions({ input: { gaugeId: id } }));
  const [checking, setChecking] = useState(false);
  const check = (
    <Button
      leftSection={<IconClipboardCheck size={18} aria-hidden />}
      mih={44}
      onClick={() => setChecking(true)}
    >
      Enter a check
    </Button>
  );
  return (
    <Page
      title={record.data?.gauge.name ?? 'Gauge'}
      description={
        <Anchor component={Link} to="/gauges" inherit>
          All gauges
        </Anchor>
      }
      actions={check}
    >
      <QueryView query={record}>
        {({ gauge, checks }) => (
          <Stack gap="lg">
            <Standing gauge={gauge} />
            <Uncertainty gauge={gauge} />
            {gauge.kind === 'torque-wrench' && <WrenchLength gauge={gauge} />}
            <Checks checks={checks} />
            <GaugeTouched gauge={gauge} />
            <GaugeCheckForm gauge={gauge} opened={checking} onClose={() => setChecking(false)} />
          </Stack>
        )}
      </QueryView>
    </Page>
  );
}

function Standing({ gauge }: { readonly gauge: Gauge }) {
  const format = useFormat();
  return (
    <Group gap="sm">
      <CalibrationBadge gauge={gauge} />
      <Text>
        {[
          GAUGE_KIND_LABELS[gauge.kind],
          `${gauge.rangeLow}–${gauge.rangeHigh} ${unitLabel(gauge.unit)}`,
          gauge.calibratedOn === null ? '' : `calibrated ${format.date(gauge.calibratedOn)}`,
          gauge.calibrationDue === null ? '' : `due ${format.date(gauge.calibrationDue)}`,
          gauge.certificate === '' ? '' : `certificate ${gauge.certificate}`,
        ]
          .filter(Boolean)
          .join(' · ')}
      </Text>
      {gauge.foundBadOn !== null && (
        <Text className={classes.caution}>
          Found bad on {format.date(gauge.foundBadOn)}. Out of use until a good check is entered; a
          reading taken with it all the same says so, on the sheet and on paper.
        </Text>
      )}
    </Group>
  );
}

const figure = (value: number): string => String(Number(value.toPrecision(2)));

/** How good a reading is and how that comes about: the maths that every verdict uses. */
function Uncertainty({ gauge }: { readonly gauge: Gauge }) {
  const unit = unitLabel(gauge.unit);
  const step = gauge.resolution / 2 / Math.sqrt(3);
  const error = gauge.maxError / Math.sqrt(3);
  return (
    <Paper withBorder p="md" component="section" aria-labelledby="good-to">
      <Title order={2} id="good-to" size="h3">
        Good to ±{figure(gauge.uncertainty)} {unit}
      </Title>
      <Text maw="72ch" mt={4}>
        Half a step of {gauge.resolution} {unit} and a largest error of {gauge.maxError} {unit} may
        each lie anywhere in their width, so each counts divided by √3: {figure(step)} and{' '}
        {figure(error)} {unit}. Together √({figure(step)}² + {figure(error)}²) ={' '}
        {figure(gauge.uncertainty / 2)} {unit}, and twice that covers about 95 of 100 readings.
      </Text>
      <Text size="sm" c="dimmed" mt={4}>
        JCGM 100 (GUM) 4.3.7 and 5.1.2, k = 2. Readings of one place that are repeated add their
        scatter at the bench.
      </Text>
    </Paper>
  );
}

function Checks({ checks }: { readonly checks: readonly GaugeCheck[] }) {
  const format = useFormat();
  return (
    <section aria-labelledby="checks">
      <Title order={2} id="checks" size="h3" mb="xs">
        Checks
      </Title>
      {checks.length === 0 ? (
        <Empty
          title="No check entered yet"
          hint="Enter each one, good or bad: calibration follows from the last good check, and a bad one shows every reading it puts in doubt."
        />
      ) : (
        <ul className={classes.checks}>
          {checks.map((check) => (
            <li key={check.at} className={classes.check} data-good={check.good}>
              <Text fw={600}>
                {format.date(check.on)}: {check.good ? '✓ good' : '✗ found bad'}
              </Text>
              <Text size="sm" c="dimmed">
                {[
                  check.note,
                  check.dueOn === null ? '' : `next due ${format.date(check.dueOn)}`,
                  check.certificate === '' ? '' : `certificate ${check.certificate}`,
                  `entered by ${check.by}`,
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </Text>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
