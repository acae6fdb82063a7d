import { Select } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { JobId } from '../../shared/contract/ids.ts';
import { JOB_STATE_LABELS, JOB_STATES } from '../../shared/work/counter/job-state.ts';
import { deskQuery } from '../common/desk.ts';

interface JobFieldProps {
  label: string;
  value: JobId | null;
  onChange: (jobId: JobId | null) => void;
  error: string | undefined;
}

const OPEN = JOB_STATES.filter((state) => state !== 'handed-over');

/** Chooses an open job by its number, its customer or its machine. */
export function JobField({ label, value, onChange, error }: JobFieldProps) {
  const [typed, setTyped] = useState('');
  const [text] = useDebouncedValue(typed, 150);
  // The chosen job's own label stands in the field: searching by it would find nothing.
  const query = useQuery({
    ...deskQuery.counter.jobs.queryOptions({
      input: { text: text.split(' · ')[0] ?? '', states: [...OPEN], limit: 20 },
    }),
    placeholderData: keepPreviousData,
  });
  return (
    <Select
      label={label}
      placeholder="Number, customer or machine"
      searchable
      selectFirstOptionOnChange
      clearable
      clearButtonProps={{ 'aria-label': 'Choose another job' }}
      nothingFoundMessage="No open job goes with that."
      data={(query.data ?? []).map((job) => ({
        value: job.id,
        label: `${job.code} · ${job.customerName} · ${job.machine} · ${JOB_STATE_LABELS[job.state]}`,
      }))}
      filter={({ options }) => options}
      value={value}
      onSearchChange={setTyped}
      onChange={(id) => onChange(id === null ? null : JobId.parse(id))}
      error={error}
    />
  );
}
