import { Text } from '@mantine/core';
import { IconAlarm } from '@tabler/icons-react';
import type { JobState } from '../../shared/work/counter/job-state.ts';
import { daysLate } from './days-late.ts';
import { useFormat } from './format.ts';
import classes from './promised.module.css';
import { useToday } from './shop.tsx';
import { timesMoved } from './times-moved.ts';

interface PromisedProps {
  job: { promisedFor: string | null; promiseMoved: number; state: JobState };
  /** Says what the date is, where no heading does. */
  named?: boolean;
}

/** The promised date, by how much it is past, and how often it was moved. */
export function Promised({ job, named = false }: PromisedProps) {
  const format = useFormat();
  const late = daysLate(job, useToday());
  if (job.promisedFor === null)
    return (
      <Text span size="sm" c="dimmed">
        {named ? 'No date promised' : 'No date'}
      </Text>
    );
  return (
    <span className={classes.promised} data-late={late > 0}>
      {late > 0 && <IconAlarm size={17} aria-hidden />}
      <span>
        {format.shortDate(job.promisedFor)}
        <span className={classes.hint}>
          {[
            named ? 'promised' : '',
            late > 0 ? `${late} ${late === 1 ? 'day' : 'days'} late` : remark(job, format),
          ]
            .filter(Boolean)
            .join(', ')}
        </span>
        {job.promiseMoved > 0 && (
          <span className={classes.hint}>{timesMoved(job.promiseMoved)}</span>
        )}
      </span>
    </span>
  );
}

function remark(
  job: { promisedFor: string | null; state: JobState },
  format: ReturnType<typeof useFormat>,
): string {
  if (job.promisedFor === null || job.state === 'handed-over') return '';
  return format.fromToday(job.promisedFor);
}
