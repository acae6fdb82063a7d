import { Anchor, Group, NumberInput, Select, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { Gauge } from '../../shared/contract/bench/index.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import classes from './bench.module.css';
import { rangeWords, reaches, reachingFirst } from './gauge-range.ts';

const standingWord = (gauge: Gauge): string =>
  gauge.foundBadOn !== null
    ? ' (found bad, out of use)'
    : gauge.expired
      ? ' (calibration expired)'
      : '';

/** The gauge in hand, which sticks for the feature, and the part's temperature when it matters. */
export function GaugeChoice(props: {
  readonly gauges: readonly Gauge[];
  readonly gauge: Gauge | null;
  /** What the reading is likely to be, base unit; null when nobody can tell. */
  readonly expected: number | null;
  readonly onGauge: (gauge: Gauge | null) => void;
  readonly temperature: number | null;
  readonly onTemperature: (temperature: number | null) => void;
}) {
  const { gauges, gauge, expected } = props;
  return (
    <div>
      <Group gap="sm" align="flex-end" wrap="wrap">
        <Select
          label="Gauge"
          placeholder={gauges.length === 0 ? 'None on the list fits' : 'Choose the gauge in hand'}
          data={reachingFirst(gauges, expected).map((each) => ({
            value: each.id,
            label: `${each.name}${standingWord(each)}${reaches(each, expected) ? '' : ` (only ${rangeWords(each)})`}`,
          }))}
          value={gauge?.id ?? null}
          onChange={(id) => props.onGauge(gauges.find((each) => each.id === id) ?? null)}
          clearable
          size="md"
          // Names of gauges with their ranges are longer than the field is on a tablet.
          comboboxProps={{ width: 'max-content', position: 'bottom-start' }}
          maxDropdownHeight={364}
          classNames={{ option: classes.option }}
          flex={1}
          miw="12rem"
        />
        <NumberInput
          label="Part at, °C"
          placeholder="near 20"
          value={props.temperature ?? ''}
          onChange={(value) => props.onTemperature(typeof value === 'number' ? value : null)}
          min={-40}
          max={300}
          hideControls
          size="md"
          w="7.5rem"
        />
      </Group>
      <Text size="sm" c="dimmed" mt={4}>
        {gauge === null ? (
          'Without a gauge the verdict takes a reading as exact. '
        ) : (
          <>
            Good to ±{Number(gauge.uncertainty.toPrecision(2))} {unitLabel(gauge.unit)}, range{' '}
            {rangeWords(gauge)}.{' '}
          </>
        )}
        <Anchor component={Link} to={gauge === null ? '/gauges' : `/gauge/${gauge.id}`} inherit>
          {gauge === null ? 'Gauges' : 'About this gauge'}
        </Anchor>
      </Text>
      {gauge !== null && !reaches(gauge, expected) && (
        <Text size="sm" className={classes.caution}>
          <IconAlertTriangle size={18} aria-hidden />
          This gauge reads {rangeWords(gauge)} only: what is measured here lies outside. Choose
          another.
        </Text>
      )}
      {gauge !== null && gauge.foundBadOn !== null && (
        <Text size="sm" className={classes.caution}>
          <IconAlertTriangle size={18} aria-hidden />
          Found bad on {gauge.foundBadOn}: out of use. A reading with it says so, here and on the
          paper.
        </Text>
      )}
      {gauge?.expired === true && (
        <Text size="sm" className={classes.caution}>
          <IconAlertTriangle size={18} aria-hidden />
          Calibration expired{gauge.calibrationDue === null ? '' : ` on ${gauge.calibrationDue}`}:
          said so at every reading and on the paper.
        </Text>
      )}
    </div>
  );
}
