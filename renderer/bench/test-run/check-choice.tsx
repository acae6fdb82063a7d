import { SegmentedControl, Text } from '@mantine/core';
import { useId } from 'react';
import { CHECK_OUTCOMES, type CheckOutcome } from '../../../shared/work/bench/test-run.ts';
import { OUTCOME_LABELS } from '../../../shared/work/bench/test-run-words.ts';
import classes from './test-run.module.css';

/** One thing that was tried: it works, it fails, it isn't there, or nobody tried. */
export function CheckChoice(props: {
  readonly label: string;
  readonly hint: string;
  readonly value: CheckOutcome;
  /** Those that can be chosen, and what they are called; the usual ones when it isn't said. */
  readonly outcomes?: readonly CheckOutcome[];
  readonly labels?: Record<CheckOutcome, string>;
  readonly onChange: (value: CheckOutcome) => void;
}) {
  const id = useId();
  const { outcomes = CHECK_OUTCOMES, labels = OUTCOME_LABELS } = props;
  return (
    <div className={classes.check}>
      <div>
        <Text fw={600} id={id}>
          {props.label}
        </Text>
        <Text size="sm" c="dimmed">
          {props.hint}
        </Text>
      </div>
      <SegmentedControl
        aria-labelledby={id}
        value={props.value}
        onChange={props.onChange}
        data={outcomes.map((value) => ({ value, label: labels[value] }))}
        size="md"
        classNames={{ label: classes.segment }}
      />
    </div>
  );
}
