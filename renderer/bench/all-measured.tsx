import { Button, Group, Text } from '@mantine/core';
import { IconArrowRight, IconChecklist, IconCircleCheck } from '@tabler/icons-react';
import { useEffect, useRef } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { JobCode } from '../../shared/contract/ids.ts';
import { FEATURE_LABELS, type MeasuredFeature } from '../../shared/work/features.ts';
import { PHASE_LABELS, type Phase } from '../../shared/work/vocabulary.ts';
import classes from './bench.module.css';

/** Where the work goes on: back to the step of the build that wanted the readings, else the next feature. */
export function AllMeasured({
  jobCode,
  phase,
  next,
  onNext,
}: {
  readonly jobCode: JobCode;
  readonly phase: Phase;
  /** The feature after this one; null at the end of the list. */
  readonly next: MeasuredFeature | null;
  readonly onNext: () => void;
}) {
  const step = useSearchParams()[0].get('step');
  const back = useRef<HTMLAnchorElement>(null);
  const on = useRef<HTMLButtonElement>(null);
  useEffect(() => (back.current ?? on.current)?.focus(), []);
  return (
    <div className={classes.measured}>
      <IconCircleCheck size={32} aria-hidden />
      <div>
        <Text fw={600}>Every place has a reading</Text>
        <Text size="sm">{PHASE_LABELS[phase]}. Choose a place below to measure it again.</Text>
      </div>
      <Group gap="sm" ml="auto" justify="flex-end">
        {step !== null && (
          <Button
            ref={back}
            component={Link}
            to={`/job/${jobCode}/bench/build?step=${step}`}
            size="lg"
            h={56}
            leftSection={<IconChecklist size={22} aria-hidden />}
          >
            Back to the build
          </Button>
        )}
        <Button
          ref={on}
          size="lg"
          h={56}
          variant={step === null ? 'filled' : 'default'}
          onClick={onNext}
          rightSection={<IconArrowRight size={20} aria-hidden />}
        >
          {next === null ? 'Go to the hold points' : `Next: ${FEATURE_LABELS[next]}`}
        </Button>
      </Group>
    </div>
  );
}
