import { Group, NativeSelect } from '@mantine/core';
import { DateField } from '../date-field.tsx';
import { useToday } from '../shop.tsx';
import { PERIOD_LABELS, type Period, periodAround, USUAL_PERIODS, usualPeriod } from './period.ts';
import classes from './reports.module.css';

const OTHER = 'other';

/** A usual period at one stroke, or any two days. */
export function PeriodPicker(props: { value: Period; onChange: (period: Period) => void }) {
  const { value, onChange } = props;
  const today = useToday();
  const set = (change: Partial<Period>) => {
    const { from, to } = { ...value, ...change };
    // The day that was typed last holds; the other one follows it.
    if (from <= to) onChange({ from, to });
    else onChange(change.from === undefined ? { from: to, to } : { from, to: from });
  };
  return (
    <Group align="flex-start" gap="sm" className={classes.period}>
      <NativeSelect
        label="Time"
        size="md"
        value={usualPeriod(value, today) ?? OTHER}
        data={[
          ...USUAL_PERIODS.map((usual) => ({ value: usual, label: PERIOD_LABELS[usual] })),
          { value: OTHER, label: 'As typed' },
        ]}
        onChange={(event) => {
          const usual = USUAL_PERIODS.find((each) => each === event.currentTarget.value);
          if (usual !== undefined) onChange(periodAround(usual, today));
        }}
      />
      <DateField
        label="First day"
        value={value.from}
        onChange={(from) => from !== null && set({ from })}
      />
      <DateField label="Last day" value={value.to} onChange={(to) => to !== null && set({ to })} />
    </Group>
  );
}
