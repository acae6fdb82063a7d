import { Button, Group, Stack, Text, Title } from '@mantine/core';
import { isDefinedError } from '@orpc/client';
import { IconAlertTriangle, IconCheck, IconPencil } from '@tabler/icons-react';
import { useState } from 'react';
import type { BenchSheet, HoldPointOnSheet } from '../../shared/contract/bench/index.ts';
import {
  FEATURE_LABELS,
  MEASURED_FEATURES,
  type MeasuredFeature,
} from '../../shared/work/features.ts';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import classes from './bench.module.css';
import { HoldPointReason, type ReasonFor } from './hold-point-reason.tsx';

const isMeasured = (feature: string): feature is MeasuredFeature =>
  MEASURED_FEATURES.some((each) => each === feature);

interface HoldPointsProps {
  readonly sheet: BenchSheet;
  /** Opens a feature that a point still wants readings of. */
  readonly onMeasure: (feature: MeasuredFeature) => void;
}

/** The steps of the build that nobody walks past, in build order. */
export function HoldPoints({ sheet, onMeasure }: HoldPointsProps) {
  const next = sheet.holdPoints.find(({ state }) => state === 'open')?.key;
  const [reasonFor, setReasonFor] = useState<ReasonFor | null>(null);
  return (
    <Stack gap="sm">
      <div>
        <Title order={2}>Hold points</Title>
        <Text>
          In build order. A point is passed by the one who saw it done; anything else needs a reason
          in writing, which is printed.
        </Text>
      </div>
      <ol style={{ listStyle: 'none', margin: 0, padding: 0 }}>
        {sheet.holdPoints.map((point, index) => (
          <HoldPoint
            key={point.key}
            sheet={sheet}
            point={point}
            number={index + 1}
            next={point.key === next}
            onMeasure={onMeasure}
            onReason={(what) => setReasonFor({ point, what })}
          />
        ))}
      </ol>
      <HoldPointReason jobId={sheet.jobId} wanted={reasonFor} onClose={() => setReasonFor(null)} />
    </Stack>
  );
}

function HoldPoint(props: {
  readonly sheet: BenchSheet;
  readonly point: HoldPointOnSheet;
  readonly number: number;
  /** The first one that is open: its turn in the build. */
  readonly next: boolean;
  readonly onMeasure: (feature: MeasuredFeature) => void;
  readonly onReason: (what: ReasonFor['what']) => void;
}) {
  const { sheet, point } = props;
  const by = useBy();
  const pass = useWrite(deskQuery.bench.passHoldPoint.mutationOptions());
  const refusedFor =
    isDefinedError(pass.error) && pass.error.code === 'READINGS_MISSING'
      ? pass.error.data.features
      : null;
  return (
    <li className={classes.point} aria-label={point.label}>
      <span className={classes.pointNumber} data-state={point.state} aria-hidden>
        {point.state === 'passed' ? (
          <IconCheck size={20} />
        ) : point.state === 'overridden' ? (
          <IconPencil size={18} />
        ) : (
          props.number
        )}
      </span>
      <div>
        <Text fw={600}>{point.label}</Text>
        <PointState point={point} />
        {point.caution !== '' && (
          <Text size="sm" className={classes.caution}>
            <IconAlertTriangle size={18} aria-hidden style={{ flex: 'none' }} />
            {point.caution}
          </Text>
        )}
        {point.state === 'open' && point.missing.length > 0 && (
          <Missing features={point.missing} onMeasure={props.onMeasure} />
        )}
        {pass.isError && (
          <Stack gap={4} mt="xs">
            <RefusalAlert error={pass.error} />
            {refusedFor !== null && (
              <Text role="alert" fw={600}>
                Missing: {refusedFor.map(labelOf).join(', ')}.
              </Text>
            )}
          </Stack>
        )}
      </div>
      {!sheet.closed && (
        <Group gap="xs" justify="flex-end">
          {point.state === 'open' ? (
            <>
              <Button
                size="md"
                h={48}
                variant={props.next ? 'filled' : 'light'}
                loading={pass.isPending}
                onClick={() => pass.mutate({ by, jobId: sheet.jobId, key: point.key })}
                aria-label={`Pass: ${point.label}`}
              >
                Pass
              </Button>
              <Button
                size="md"
                h={48}
                variant="default"
                onClick={() => {
                  pass.reset();
                  props.onReason('override');
                }}
                aria-label={`Override: ${point.label}`}
              >
                Override…
              </Button>
            </>
          ) : (
            <Button
              size="md"
              h={48}
              variant="default"
              onClick={() => props.onReason('reopen')}
              aria-label={`Reopen: ${point.label}`}
            >
              Reopen…
            </Button>
          )}
        </Group>
      )}
    </li>
  );
}

const labelOf = (feature: string): string =>
  isMeasured(feature) ? FEATURE_LABELS[feature] : feature;

function PointState({ point }: { readonly point: HoldPointOnSheet }) {
  const format = useFormat();
  const when = point.at === null ? '' : `, ${format.instant(point.at)}`;
  if (point.state === 'passed')
    return (
      <Text size="sm">
        Passed by {point.by}
        {when}
      </Text>
    );
  if (point.state === 'overridden')
    return (
      <Text size="sm">
        Overridden by {point.by}
        {when}: <q>{point.reason}</q>
      </Text>
    );
  return (
    <Text size="sm" c="dimmed">
      Open
      {point.by !== '' && `; reopened by ${point.by}${when}`}
      {point.by !== '' && point.reason !== '' && (
        <>
          : <q>{point.reason}</q>
        </>
      )}
    </Text>
  );
}

function Missing({
  features,
  onMeasure,
}: {
  readonly features: readonly string[];
  readonly onMeasure: (feature: MeasuredFeature) => void;
}) {
  return (
    <Group gap="xs" mt={4}>
      <Text size="sm">No final reading yet:</Text>
      {features.map((feature) => {
        const measured = isMeasured(feature)
          ? feature
          : MEASURED_FEATURES.find((each) => FEATURE_LABELS[each] === feature);
        return measured === undefined ? (
          <Text key={feature} size="sm">
            {feature}
          </Text>
        ) : (
          <Button
            key={feature}
            size="sm"
            mih={44}
            variant="default"
            onClick={() => onMeasure(measured)}
          >
            Measure {FEATURE_LABELS[measured].toLowerCase()}
          </Button>
        );
      })}
    </Group>
  );
}
