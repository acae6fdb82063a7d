import { Select, Text, TextInput } from '@mantine/core';
import { useLocalStorage } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import type { Gauge, TestRuns } from '../../../shared/contract/bench/index.ts';
import type { GaugeId } from '../../../shared/contract/ids.ts';
import { dimensionOf, displayNumber } from '../../../shared/trade/index.ts';
import {
  type SpeedFound,
  speedBand,
  speedBandWords,
} from '../../../shared/work/bench/run-speed.ts';
import type { RunFeature } from '../../../shared/work/features.ts';
import { STANDING_LABELS } from '../../../shared/work/vocabulary.ts';
import { VerdictBadge } from '../../common/badges.tsx';
import { deskQuery } from '../../common/desk.ts';
import classes from './test-run.module.css';

interface Tachometer {
  readonly gauge: Gauge | null;
  readonly all: readonly Gauge[];
  readonly choose: (id: string | null) => void;
}

/** The tachometer in hand at this station, kept over jobs. */
export function useTachometer(): Tachometer {
  const gauges = useQuery(deskQuery.bench.gauges.queryOptions({ input: {} }));
  const [chosen, setChosen] = useLocalStorage<GaugeId | null>({
    key: 'tappet.bench.tachometer',
    defaultValue: null,
    getInitialValueInEffect: false,
  });
  const all = (gauges.data ?? []).filter(({ unit }) => dimensionOf(unit) === dimensionOf('1/min'));
  return {
    all,
    gauge: all.find(({ id }) => id === chosen) ?? null,
    choose: (id) => setChosen(all.find((each) => each.id === id)?.id ?? null),
  };
}

export function TachometerChoice({
  tachometer: { all, gauge, choose },
  error,
}: {
  readonly tachometer: Tachometer;
  readonly error: string | undefined;
}) {
  const remarks = [
    gauge === null
      ? 'Without one named the speeds are taken as exact, and the paper says so.'
      : `Good to ±${displayNumber(gauge.uncertainty, 'rpm')} rpm.`,
    gauge?.foundBadOn != null ? `Found bad on ${gauge.foundBadOn}: out of use.` : '',
    gauge?.expired === true ? `Its calibration was due ${gauge.calibrationDue}.` : '',
  ];
  return (
    <Select
      label="Tachometer"
      description={remarks.filter(Boolean).join(' ')}
      inputWrapperOrder={['label', 'input', 'description', 'error']}
      placeholder={all.length === 0 ? 'None on the list' : 'Choose the one in hand'}
      data={all.map(({ id, name }) => ({ value: id, label: name }))}
      value={gauge?.id ?? null}
      onChange={choose}
      clearable
      error={error}
      maw="28rem"
      mt="sm"
      classNames={{ input: classes.choice, option: classes.option }}
    />
  );
}

/** One speed, what the book says of it, and the verdict as it is typed. */
export function SpeedField(props: {
  readonly label: string;
  readonly feature: RunFeature;
  readonly book: TestRuns['speeds'];
  readonly found: SpeedFound | undefined;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly error: string | undefined;
}) {
  const { found } = props;
  const known = props.book.find(({ feature }) => feature === props.feature);
  return (
    <div className={classes.speed}>
      <TextInput
        label={props.label}
        rightSection={<Text size="sm">rpm</Text>}
        rightSectionWidth={52}
        value={props.value}
        onChange={(event) => props.onChange(event.currentTarget.value)}
        error={props.error}
        inputMode="decimal"
        autoComplete="off"
        maxLength={40}
        classNames={{ input: classes.figure }}
      />
      <Text size="sm">
        {known === undefined
          ? 'Not in the spec book'
          : `Book: ${speedBandWords(speedBand(known))}, ${STANDING_LABELS[known.standing].toLowerCase()}`}
      </Text>
      <div role="status" aria-label={`Verdict, ${props.label}`} className={classes.speedVerdict}>
        {found !== undefined && found.verdict !== 'no-band' && (
          <VerdictBadge verdict={found.verdict} />
        )}
      </div>
    </div>
  );
}
