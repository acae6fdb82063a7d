import { Anchor, Group, NumberInput, Select, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { Link } from 'react-router';
import { unitLabel } from '../../../shared/trade/index.ts';
import type { WrenchMark } from '../../../shared/work/bench/wrench-mark.ts';
import classes from './torque.module.css';
import type { WrenchInUse } from './use-wrench.ts';

/** Which wrench, and the extension on it: both change what it is set to. */
export function WrenchChoice({
  wrench,
  mark,
}: {
  readonly wrench: WrenchInUse;
  readonly mark: WrenchMark | null;
}) {
  const { gauge } = wrench;
  return (
    <div>
      <Group gap="sm" align="flex-end" wrap="wrap">
        <Select
          label="Wrench"
          placeholder={
            wrench.suited.length === 0 ? 'None on the list' : 'Choose the wrench in hand'
          }
          data={wrench.suited.map(({ id, name }) => ({ value: id, label: name }))}
          value={gauge?.id ?? null}
          onChange={(id) =>
            // Another wrench has another lever: the register's is proposed.
            wrench.change({
              gaugeId: wrench.suited.find((each) => each.id === id)?.id ?? null,
              length: null,
            })
          }
          clearable
          size="md"
          flex={1}
          miw="12rem"
        />
        <Length
          label="Extension, mm"
          value={wrench.extension === 0 ? '' : wrench.extension}
          onChange={(extension) => wrench.change({ extension: extension ?? 0 })}
        />
        {wrench.extension > 0 && (
          <>
            <Length
              label="Its angle, °"
              value={wrench.angle}
              onChange={(angle) => wrench.change({ angle: angle ?? 0 })}
              most={180}
            />
            <Length
              label="Wrench length, mm"
              value={wrench.length ?? ''}
              onChange={(length) => wrench.change({ length: length === 0 ? null : length })}
            />
          </>
        )}
      </Group>
      {wrench.extension > 0 && (
        <Text size="sm" mt={4}>
          Extension from the square to the bolt; wrench from the mark on its grip to the square
          {gauge?.length != null && `, ${gauge.length} mm by the list of gauges`}; 0° is straight
          out, at 90° nothing changes.
        </Text>
      )}
      <Remarks wrench={wrench} mark={mark} />
    </div>
  );
}

function Length(props: {
  readonly label: string;
  readonly value: number | '';
  readonly onChange: (value: number | null) => void;
  readonly most?: number;
}) {
  return (
    <NumberInput
      label={props.label}
      styles={{ label: { whiteSpace: 'nowrap' } }}
      placeholder="none"
      value={props.value}
      onChange={(value) => props.onChange(typeof value === 'number' ? value : null)}
      min={0}
      max={props.most ?? 1_000}
      hideControls
      size="md"
      miw="8rem"
      w="min-content"
    />
  );
}

function Remarks({
  wrench,
  mark,
}: {
  readonly wrench: WrenchInUse;
  readonly mark: WrenchMark | null;
}) {
  const { gauge } = wrench;
  const remarks = [
    mark === null ? 'With this extension the length of the wrench is needed for its setting.' : '',
    gauge === null
      ? 'No wrench named: the setting is the source’s figure, and the paper says so.'
      : '',
    gauge?.expired === true
      ? `Calibration expired${gauge.calibrationDue === null ? '' : ` on ${gauge.calibrationDue}`}: said so at the reading and on the paper.`
      : '',
    gauge !== null &&
    mark !== null &&
    (mark.setting < gauge.rangeLow || mark.setting > gauge.rangeHigh)
      ? `Outside this wrench’s range, ${gauge.rangeLow}–${gauge.rangeHigh} ${unitLabel(gauge.unit)}: take another wrench.`
      : '',
  ].filter(Boolean);
  return (
    <>
      {remarks.map((remark) => (
        <p key={remark} className={classes.remark}>
          <IconAlertTriangle size={18} aria-hidden />
          <span>{remark}</span>
        </p>
      ))}
      <Anchor component={Link} to="/gauges" size="sm">
        Gauges
      </Anchor>
    </>
  );
}
